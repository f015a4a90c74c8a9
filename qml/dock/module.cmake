# SPDX-License-Identifier: Apache-2.0
snugline_qml_module(qml_dock Snugline.Dock dock LINK snugline_models qml_drawing qml_parts qml_tokens)
