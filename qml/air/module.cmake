# SPDX-License-Identifier: Apache-2.0
# Weather, gauge and air: what the Line, the guide and the Book show of it alike. All values come in.
snugline_qml_module(qml_air Snugline.Air air LINK qml_parts qml_tokens)
