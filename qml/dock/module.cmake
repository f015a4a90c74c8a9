# SPDX-License-Identifier: Apache-2.0
snugline_qml_module(qml_dock Snugline.Dock dock LINK qml_models qml_drawing qml_parts qml_tokens)
