# SPDX-License-Identifier: Apache-2.0
snugline_qml_module(qml_say Snugline.Say say LINK qml_models qml_drawing qml_parts qml_tokens)
