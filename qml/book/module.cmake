# SPDX-License-Identifier: Apache-2.0
snugline_qml_module(qml_book Snugline.Book book LINK qml_dock qml_models qml_air qml_drawing qml_parts qml_tokens)
