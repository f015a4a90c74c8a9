# SPDX-License-Identifier: Apache-2.0
snugline_qml_module(qml_dock Snugline.Dock dock LINK qml_models qml_drawing qml_parts qml_tokens)
# Nothing of ours is compiled here, only what Qt generates from the QML files, which does not hold our warnings.
target_compile_options(qml_dock PRIVATE -w)
