"""The barn file as it should not be: every fault at once, with its line, what is allowed and the nearest word."""

from datetime import date
from pathlib import Path

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from bot.barn import check, demo_path, load
from bot.problems import Problem, WrongFile, nearest

TODAY = date(2026, 11, 25)
GOOD = demo_path().read_text(encoding="utf-8")

SMALL = """\
barn: Small Barn
timezone: America/New_York
place: {latitude: 44.5, longitude: -72.3}
rounds: [{name: morning, at: "07:00"}, {name: evening, at: "16:30"}]
people:
  - {name: Theo, telegram: 1001, role: manager}
  - {name: Ruth, telegram: 1003, role: owner}
drying:
  - {name: loft, follows: outdoors}
horses:
  - {name: Maple, also: [Mapes], owner: Ruth, wearing: [maple-sheet]}
  - {name: Ned}
garments:
  - {id: maple-sheet, horse: Maple, kind: sheet}
  - {id: maple-liner, horse: Maple, kind: liner, fill_g: 100, dries: loft}
"""
JUNK = ("", "[]", "{}", "~", "-1", "1e999", ".inf", "true", "x: y", "- z", "9" * 500, "2026-02-30", "&a [*a]", "*a")


def faults(tmp_path: Path, text: str | bytes) -> list[str]:
    """What loading says of a file with this text, one fault a line, without the file's name."""
    path = tmp_path / "barn.yaml"
    path.write_bytes(text.encode() if isinstance(text, str) else text)
    with pytest.raises(WrongFile) as caught:
        load(path, TODAY)
    assert caught.value.status == 2
    return [line.removeprefix(f"{path}:") for line in str(caught.value).splitlines()]


def test_a_tape_that_makes_no_horse_is_measured_again(tmp_path: Path) -> None:
    """Each measure may be true of some horse, both together of none."""
    text = SMALL.replace("{name: Ned}", "{name: Ned, girth_cm: 280, length_cm: 260}")
    assert faults(tmp_path, text) == [
        "12: horse Ned, girth_cm: with length_cm this makes 1716 kg; allowed: 30 to 1500, measure again"
    ]


def warnings(tmp_path: Path, text: str) -> list[Problem]:
    """What check warns of in a file that can be used."""
    path = tmp_path / "barn.yaml"
    path.write_text(text, encoding="utf-8")
    barn, problems = check(path, TODAY)
    assert barn is not None
    assert {problem.level for problem in problems} <= {"warning"}
    return problems


@pytest.mark.parametrize(
    ("good", "bad", "fault"),
    [
        ("role: manager", "role: manger",
         "6: person Theo, role: found 'manger'; allowed: manager, groom, owner; did you mean 'manager'?"),
        ("owner: Ruth", "owner: Rut",
             "11: horse Maple, owner: found 'Rut', not among people; did you mean 'Ruth'?; allowed: Theo, Ruth"),
        ("wearing: [maple-sheet]", "wearing: [maple-shet]",
         "11: horse Maple, wearing: found 'maple-shet', not among garments; did you mean 'maple-sheet'?; "
         "allowed: maple-sheet, maple-liner"),
        ("horse: Maple, kind: liner", "horse: Mapel, kind: liner",
         "15: garment maple-liner, horse: found 'Mapel', not among horses; did you mean 'Maple'?; allowed: Maple, Ned"),
        ("dries: loft", "dries: attic",
             "15: garment maple-liner, dries: found 'attic', not among drying; allowed: loft"),
        ("America/New_York", "America/New_Yrok",
         "2: timezone: found 'America/New_Yrok'; "
         "allowed: a time zone by its place, as in America/New_York; did you mean 'America/New_York'?"),
        ("timezone: America", "timezone: ../America",
         "2: timezone: found '../America/New_York'; "
         "allowed: a time zone by its place, as in America/New_York; did you mean 'America/New_York'?"),
        ("{name: Ned}", "{name: mapes}",
             "12: horse mapes, name: 'mapes' is already another's, in line 11; names must be unique"),
        ("{name: Ned}", "{name: Ned, also: [MAPLE]}",
             "12: horse Ned, also: 'MAPLE' is already another's, in line 11; names must be unique"),
        ("telegram: 1003", "telegram: 1001", "7: person Ruth, telegram: 1001 is already somebody else's, in line 6"),
        ("role: owner", "role: owner, also: [théo]",
             "7: person Ruth, also: 'théo' is already another's, in line 6; names must be unique"),
        ("id: maple-liner", "id: maple-sheet",
             "15: garment maple-sheet, id: 'maple-sheet' is already another's, in line 14; names must be unique"),
        ("16:30", "7:00", "4: round evening, at: found 07:00, as in line 4; rounds have different times"),
        ("16:30", "25:30", "4: round evening, at: found '25:30'; allowed: a time of day from \"00:00\" to \"23:59\""),
        ("name: evening", "name: Morning",
             "4: round Morning, name: 'Morning' is already another's, in line 4; names must be unique"),
        ("{name: Ned}", "{name: Ned, born: 2027}",
             "12: horse Ned, born: found 2027; allowed: 1964 to 2026, not in the future"),
        ("{name: Ned}", "{name: Ned, born: 2026-11-26}",
         "12: horse Ned, born: found 2026-11-26; allowed: 1964 to 2026, not in the future"),
        ("{name: Ned}", "{name: Ned, born: spring}",
             "12: horse Ned, born: found 'spring'; allowed: a year or a date, as in 2009 or 2009-05-14"),
        ("{name: Ned}", "{name: Ned, condition: 0}", "12: horse Ned, condition: found 0; allowed: 1 to 9"),
        ("{name: Ned}", "{name: Ned, condition: .nan}", "12: horse Ned, condition: found nan; allowed: 1 to 9"),
        ("{name: Ned}", "{name: Ned, weight_kg: 5200}", "12: horse Ned, weight_kg: found 5200; allowed: 30 to 1,500"),
        ("{name: Ned}", "{name: Ned, weight_kg: heavy}", "12: horse Ned, weight_kg: found 'heavy'; allowed: a number"),
        ("{name: Ned}", "{name: Ned, girth_cm: 190}",
             "12: horse Ned, girth_cm: length_cm is wanted with girth_cm; or give weight_kg"),
        ("{name: Ned}", "{name: Ned, size_in: 75, size_cm: 190}",
             "12: horse Ned, size_cm: size_in is given as well; one of the two is enough"),
        ("{name: Ned}", "{name: Ned, keep_bare: yes}", "12: horse Ned, keep_bare: found 'yes'; allowed: true, false"),
        ("{name: Ned}", "{name: Ned, where: {mornin: field}}",
         "12: horse Ned, where.mornin: found 'mornin', not among rounds; did you mean 'morning'?; "
         "allowed: morning, evening"),
        ("{name: Ned}", "{name: Ned, where: {morning: feild}}",
         "12: horse Ned, where.morning: found 'feild'; allowed: field, stall; did you mean 'field'?"),
        ("{name: Ned}", "{name: Ned, clip: {style: trase}}",
         "12: horse Ned, clip.style: found 'trase'; "
         "allowed: none, bib, trace, blanket, hunter, full; did you mean 'trace'?"),
        ("{name: Ned}", "{name: Ned, clip: trace}", "12: horse Ned, clip: found 'trace'; allowed: a group of keys"),
        ("{name: Ned}", "{name: Ned, wearing: [maple-sheet]}",
         "12: horse Ned, wearing: 'maple-sheet' is already worn, in line 11"),
        ("telegram: 1003", "telegram: 10.5", "7: person Ruth, telegram: found 10.5; allowed: a whole number"),
        ("telegram: 1003", "telegram: -1", "7: person Ruth, telegram: found -1; allowed: 0 to 4,503,599,627,370,496"),
        ('[{name: morning, at: "07:00"}, {name: evening, at: "16:30"}]', "morning",
         "4: rounds: found 'morning'; allowed: a list, an entry a line behind '- '"),
        ("{name: Ned}", "{coat: fine}", "12: horse 2, name: this key is missing"),
        ("{name: Ned}", "{name: ''}", "12: horse , name: found ''; allowed: a name on one line, 1 to 100 characters"),
        ("{name: Ned}", "{name: }", "12: horse 2, name: found nothing; allowed: a word"),
        ("kind: sheet", "kind: sheet, fill_g: 100",
             "14: garment maple-sheet, fill_g: found 100 on a sheet; a sheet has no fill, with fill it is a turnout"),
        ("fill_g: 100", "fill_g: -100", "15: garment maple-liner, fill_g: found -100; allowed: 0 to 600"),
        ("fill_g: 100", "fill_g: 0", "15: garment maple-liner, fill_g: a liner is its fill; allowed: more than 0"),
        ("kind: sheet", "kind: shete",
             "14: garment maple-sheet, kind: found 'shete'; "
             "allowed: sheet, turnout, liner, stable, cooler, neck; did you mean 'sheet'?"),
        ("follows: outdoors", "follows: outdoors, temperature_c: 5",
             "9: drying place loft, follows: a place that follows outdoors has no temperature or humidity of its own"),
        ("latitude: 44.5", "latitude: 144.5", "3: place.latitude: found 144.5; allowed: -90 to 90"),
        ("latitude: 44.5", "latitude: true", "3: place.latitude: found true; allowed: a number"),
        ("barn: Small", "forecast: [open-metoe]\nbarn: Small",
             "1: forecast: found 'open-metoe'; "
             "allowed: open-meteo, met-norway, nws, file:PATH; did you mean 'open-meteo'?"),
        ("barn: Small", "forecast: open-meteo\nbarn: Small",
             "1: forecast: found 'open-meteo'; allowed: a list, as in [one, two]"),
        ("barn: Small", "contact: \"a\\r\\nX: y\"\nbarn: Small",
             "1: contact: found 'a X: y'; allowed: a name on one line, 1 to 100 characters"),
        ("barn: Small", "contact: señor@example.org\nbarn: Small",
         "1: contact: found 'señor@example.org'; allowed: an address in plain letters, as in barn@example.org"),
        ("barn: Small Barn", "barn: Small Barn\nbarn: Other Barn",
             "2: 'barn' stands here for the second time; the first is in line 1"),
        ("{name: Ned}", "{name: Ned, <<: heavy}", "12: '<<' wants a group of keys, as in <<: *other"),
        ("fill_g: 100", "fill_g: true", "15: garment maple-liner, fill_g: found true; allowed: a number"),
        ("{name: Ned}", "{name: Ned, ? [a, b] : 1}", "12: a list or a group cannot be a key"),
    ],
)  # fmt: skip
def test_a_fault_says_where_what_is_allowed_and_what_was_meant(tmp_path: Path, good: str, bad: str, fault: str) -> None:
    """One fault, one line that a person can act on."""
    assert SMALL.count(good) == 1
    assert faults(tmp_path, SMALL.replace(good, bad)) == [fault]


def test_the_small_barn_of_these_tests_is_a_good_one(tmp_path: Path) -> None:
    """Each fault above is the only one in its file."""
    assert warnings(tmp_path, SMALL) == []


def test_a_section_that_holds_nothing_yet_is_empty(tmp_path: Path) -> None:
    """Who begins a file writes the heads first."""
    head = SMALL.partition("drying:")[0]
    warnings(tmp_path, f"{head}drying:\nhorses: [{{name: Ned}}]\ngarments:\n")


def test_an_unknown_key_is_answered_with_the_known_ones(tmp_path: Path) -> None:
    """A key in a wrong spelling is never passed over in silence."""
    (fault,) = faults(tmp_path, SMALL.replace("{name: Ned}", "{name: Ned, shelte: shed}"))
    assert fault.startswith("12: horse Ned, shelte: unknown key; did you mean 'shelter'?; allowed: ")
    assert "hay_feed" in fault


def test_all_faults_come_at_once_in_the_files_order(tmp_path: Path) -> None:
    """A person mends a file in one go: faults of shape and of names together."""
    text = SMALL.replace("units", "unit").replace("role: owner", "role: ownr").replace("owner: Ruth", "owner: Rut")
    found = faults(tmp_path, text.replace("kind: liner", "kind: linr").replace("dries: loft", "dries: lof"))
    assert [int(line.split(":")[0]) for line in found] == [7, 11, 15, 15]


@pytest.mark.parametrize(
    ("text", "fault"),
    [
        ("", "1: the file is empty; demo_barn.yaml shows what a barn file holds"),
        ("# nothing\n", "1: the file is empty; demo_barn.yaml shows what a barn file holds"),
        ("- a\n", "1: found a list; allowed: keys, as in 'barn: Windrow Farm'"),
        ("barn: [a\n", "2: not YAML at column 1: "),
        ("barn: a\n\ttimezone: b\n", "2: not YAML at column 1: a tab; indent with spaces"),
        ("barn: a\n---\nbarn: b\n", "2: not YAML at column 1: "),
        (b"barn: \xff\n", "1: not UTF-8 text; save the file as UTF-8"),
        ("barn: a".encode("utf-16"), "1: not UTF-8 text; save the file as UTF-8"),
        ("barn: a\nplace: \x07\n", "2: a character that YAML does not allow"),
        ("[" * 5000, "1: not YAML at column"),
        ("a: &a [*a]\n", "1: nested too deep or too often repeated by aliases"),
    ],
)  # fmt: skip
def test_what_is_no_barn_file_gets_one_clear_line(tmp_path: Path, text: str | bytes, fault: str) -> None:
    """Empty, broken, of another encoding: one line, with its position."""
    found = faults(tmp_path, text)
    assert len(found) == 1
    assert found[0].startswith(fault)


def test_a_few_lines_of_aliases_cannot_mean_billions(tmp_path: Path) -> None:
    """Nested aliases grow tenfold a line; reading stops long before memory does."""
    lines = ["l0: &l0 [a,a,a,a,a,a,a,a,a,a]"]
    lines += [f"l{k}: &l{k} [{','.join([f'*l{k - 1}'] * 10)}]" for k in range(1, 10)]
    assert faults(tmp_path, "\n".join(lines)) == ["6: nested too deep or too often repeated by aliases"]


def test_a_file_that_cannot_be_a_barn_file_is_not_read_to_its_end(tmp_path: Path) -> None:
    """A picture of the barn is no barn file."""
    assert faults(tmp_path, b"#" * (9 * 2**20)) == ["1: larger than 8 MB; a barn file is text of a few hundred lines"]


def test_a_missing_file_and_a_folder_get_one_clear_line(tmp_path: Path) -> None:
    """A mistyped path is the commonest fault of all."""
    for path, said in ((tmp_path, "1: this is a folder"), (tmp_path / "no.yaml", "1: cannot be read: no such file")):
        with pytest.raises(WrongFile) as caught:
            load(path)
        assert str(caught.value).removeprefix(f"{path}:").startswith(said)


@pytest.mark.parametrize(
    ("good", "other", "warning"),
    [
        ("dries: loft", "also: [the sheet]}\n  - {id: b, kind: sheet, also: [The Sheet]",
         "16: 'the sheet' is what people call maple-liner, b; haybell will ask which is meant"),
        ("{name: Ned}", "{name: Mable}", "12: 'Mable' is one letter from 'Maple'; a mistyped name will be asked about"),
        ("role: manager", "role: groom",
             "5: nobody is a manager; a shivering horse that nobody answers for has no one to be told"),
        ("{name: Ned}", "{name: Ned, clip: {style: full, on: 2027-01-05}}",
             "12: horse Ned, clip.on: 2027-01-05 is still to come"),
        ("barn: Small", "forecast: [file:/no/such.csv]\nbarn: Small", "1: there is no file /no/such.csv yet"),
        ("barn: Small", "forecast: [nws]\nbarn: Small",
             "1: nws asks for a contact; without the key 'contact' it will be passed over"),
    ],
)  # fmt: skip
def test_what_may_be_meant_so_is_only_warned_of(tmp_path: Path, good: str, other: str, warning: str) -> None:
    """A warning stops nothing: the barn is there."""
    (problem,) = warnings(tmp_path, SMALL.replace(good, other))
    assert str(problem).partition("barn.yaml:")[2] == warning


@settings(max_examples=150, deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture])
@given(text=st.one_of(st.text(), st.binary(), st.text("{}[]:,-&*!|>'\"#%@ \n\tab1~<")))
def test_no_text_crashes_the_loader(tmp_path: Path, text: str | bytes) -> None:
    """Whatever the file holds, the answer is a barn or lines for people."""
    path = tmp_path / "any.yaml"
    path.write_bytes(text.encode("utf-8", "surrogatepass") if isinstance(text, str) else text)
    barn, problems = check(path, TODAY)
    assert barn is not None or problems
    assert all("\n" not in str(problem) for problem in problems)


@settings(max_examples=150, deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture])
@given(data=st.data())
def test_no_mangled_barn_crashes_the_loader(tmp_path: Path, data: st.DataObject) -> None:
    """The demo barn with values replaced, lines dropped and keys renamed: faults with lines that the file has."""
    lines = GOOD.splitlines()
    for _ in range(data.draw(st.integers(1, 4))):
        k = data.draw(st.integers(0, len(lines) - 1))
        junk = data.draw(st.sampled_from(JUNK))
        how = data.draw(st.sampled_from(["drop", "value", "key", "whole"]))
        head, _, tail = lines[k].partition(":")
        lines[k] = {"drop": "", "value": f"{head}: {junk}", "key": f"{head}x:{tail}", "whole": junk}[how]
    path = tmp_path / "mangled.yaml"
    path.write_text("\n".join(lines), encoding="utf-8")
    barn, problems = check(path, TODAY)
    assert barn is not None or problems
    assert all(1 <= problem.line <= len(lines) + 1 for problem in problems)


def test_no_near_word_is_offered_where_none_is_near() -> None:
    """A far guess is worse than none."""
    assert nearest("zebra", ["manager", "groom"]) is None
    assert nearest(7, ["manager"]) is None
    assert nearest("MANGER", ["manager", "groom"]) == "manager"
