// SPDX-License-Identifier: Apache-2.0
// The module that the app loads when the Dock is first opened, so that a start does not pay for Qt Nfc.
#include "platform/nfc/qt_nfc_reader.h"

extern "C" Q_DECL_EXPORT snugline::ports::NfcReader* snuglineMakeNfc() { return new snugline::nfc::QtNfcReader; }
