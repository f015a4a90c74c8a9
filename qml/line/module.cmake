# SPDX-License-Identifier: Apache-2.0
snugline_qml_module(qml_line Snugline.Line line LINK qml_say qml_models qml_air qml_drawing qml_parts qml_tokens)
