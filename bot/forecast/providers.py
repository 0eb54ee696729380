"""The providers by name. One more is one more file and one more name here."""

from bot.forecast import met_norway, nws, open_meteo
from bot.forecast.answers import Provider

PROVIDERS: dict[str, Provider] = {provider.NAME: provider for provider in (open_meteo, met_norway, nws)}
