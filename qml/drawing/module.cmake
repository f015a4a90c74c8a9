# SPDX-License-Identifier: Apache-2.0
snugline_qml_module(qml_drawing Snugline.Drawing drawing SOURCES strip_glyph.cpp strip_glyph.h LINK qml_parts qml_tokens SINGLETONS PartWords.qml)
