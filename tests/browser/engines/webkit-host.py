#!/usr/bin/python3
"""A bare WebKitGTK window the size of a phone, for WebKitWebDriver to drive. Unlike the browser that comes with the
library, which is private under automation, what it stores lies in the folder WEBKIT_HOST_DATA and is there again next time."""

import os

import gi

gi.require_version('Gtk', '3.0')
gi.require_version('WebKit2', '4.1')
from gi.repository import Gtk, WebKit2  # noqa: E402

base = os.environ['WEBKIT_HOST_DATA']
context = WebKit2.WebContext.new_with_website_data_manager(
    WebKit2.WebsiteDataManager(base_data_directory=base + '/data', base_cache_directory=base + '/cache')
)
context.set_automation_allowed(True)
window = Gtk.Window()
window.set_default_size(390, 844)
window.connect('destroy', Gtk.main_quit)


def new_view(_session):
    view = WebKit2.WebView(web_context=context, is_controlled_by_automation=True)
    window.add(view)
    window.show_all()
    return view


def started(_context, session):
    about = WebKit2.ApplicationInfo()
    about.set_name('webkit-host')
    about.set_version(
        WebKit2.get_major_version(), WebKit2.get_minor_version(), WebKit2.get_micro_version()
    )
    session.set_application_info(about)
    session.connect('create-web-view', new_view)


context.connect('automation-started', started)
Gtk.main()
