"""Weather from outside, brought to one `Hours`: only `refresh` asks the network, a reply uses `latest`.

hours        Hours cut, padded, written as plain numbers
readings     readings on the hourly grid; what is impossible or missing becomes NaN and a note
answers      what a provider is asked, and its JSON read without trust
open_meteo   ask(place, contact) and parse(bytes): its units and customs end there
met_norway   the same two functions
nws          the same two functions; intervals expanded
csv_table    hours from a table
epw          hours from a year for building simulation
saved        hours from a provider's JSON as somebody saved it
file         which of the three a file is
providers    PROVIDERS, by name
wire         one GET within a time
last_good    the last good answer of each source, and its age
asking       one provider by its rules: contact, expiry, only if it changed
age          when a forecast is too old, or for another day
comparing    two providers side by side
fetching     refresh: the sources in the barn's order, each within its time
choosing     latest, from_file: the forecast in force, with its age and faults in words
"""

from bot.forecast.choosing import Forecast, from_file, latest
from bot.forecast.fetching import Fetched, Outcome, refresh
from bot.forecast.hours import from_air, to_air, unknown_hours, window
from bot.forecast.last_good import LastGood
from bot.forecast.providers import PROVIDERS
from bot.forecast.readings import Note, Parsed, Unreadable

__all__ = [
    "PROVIDERS",
    "Fetched",
    "Forecast",
    "LastGood",
    "Note",
    "Outcome",
    "Parsed",
    "Unreadable",
    "from_air",
    "from_file",
    "latest",
    "refresh",
    "to_air",
    "unknown_hours",
    "window",
]
