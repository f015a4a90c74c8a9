# SPDX-License-Identifier: Apache-2.0
snugline_qml_module(qml_book Snugline.Book book LINK qml_dock qml_models qml_air qml_drawing qml_parts qml_tokens)
# Nothing of ours is compiled here, only what Qt generates from the QML files, which does not hold our warnings.
target_compile_options(qml_book PRIVATE -w)
