# SPDX-License-Identifier: Apache-2.0
snugline_qml_module(qml_parts Snugline.Parts parts LINK qml_tokens)
