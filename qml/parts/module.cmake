# SPDX-License-Identifier: Apache-2.0
snugline_qml_module(qml_parts Snugline.Parts parts SOURCES sign_glyph.cpp sign_glyph.h touchable.cpp touchable.h LINK qml_tokens SINGLETONS Bearer.qml Glass.qml)
