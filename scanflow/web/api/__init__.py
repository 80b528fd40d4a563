"""The JSON API, one blueprint per noun."""

from flask import Blueprint

BLUEPRINTS: tuple[Blueprint, ...] = ()
