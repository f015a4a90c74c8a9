#!/bin/sh
# SPDX-License-Identifier: Apache-2.0
# Runs a command on a bus of its own, which is its session bus and its system bus at once, so that tests never meet this machine's Bluetooth
# nor each other.
exec dbus-run-session -- sh -c 'DBUS_SYSTEM_BUS_ADDRESS=$DBUS_SESSION_BUS_ADDRESS exec "$@"' sh "$@"
