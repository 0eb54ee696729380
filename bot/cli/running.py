"""Commands that run a group: demo, chat, serve."""

import argparse


def demo(args: argparse.Namespace) -> int:
    """A whole day on the invented farm."""
    from bot.chat.session import demo as play

    play()
    print(
        "\nNext: type to it yourself    haybell chat demo_barn.yaml"
        "\n      ask what it understands haybell read demo_barn.yaml --as Inés 'mapel sweaty'"
        "\n      write your own barn     copy demo_barn.yaml, then haybell check my_barn.yaml"
    )
    return 0


def chat(args: argparse.Namespace) -> int:
    """The group in a terminal."""
    from bot.chat.session import live, scripted

    return scripted(args) if args.script else live(args)


def serve(args: argparse.Namespace) -> int:
    """The groups of these barns in Telegram, until stopped."""
    from bot.serving import run

    return run(args.barn, args.data)
