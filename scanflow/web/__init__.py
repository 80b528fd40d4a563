"""The service: a JSON API for programs and stations, pages for people."""

from scanflow.web.app import create_app

__all__ = ["create_app"]
