# SPDX-License-Identifier: Apache-2.0
snugline_qml_module(qml_tokens Snugline.Tokens tokens SOURCES bundled_font.cpp bundled_font.h SINGLETONS Theme.qml
  RESOURCES ../fonts/B612-Regular.otf ../fonts/B612-Bold.otf)
