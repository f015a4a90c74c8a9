// SPDX-License-Identifier: Apache-2.0
// Purpose: the one place where the app is put together: edges (clock, keys, gauge) -> Desk -> models -> window. The shipping program, the
// demo and the journeys differ only in the edges they hand in. Ownership: the Composition owns all of it. Thread: GUI thread.
#pragma once

#include <functional>
#include <memory>

#include <QString>

#include "core/book/fact.h"
#include "core/ports/gauge_port.h"
#include "core/ports/outbox.h"
#include "core/ports/photo_port.h"
#include "core/ports/tag_port.h"
#include "qml/models/desk.h"

class QQmlComponent;
class QQuickView;

namespace snugline::models {
class Choices;
class Shell;
}  // namespace snugline::models

namespace snugline::app {

struct Edges {
  models::Desk::MakeClock makeClock;
  models::Desk::MakeKeys makeKeys;
  std::shared_ptr<ports::Attempts> attempts = nullptr;                        // none: missed codes are forgotten when the app ends
  std::function<std::unique_ptr<ports::PressureGauge>()> makeGauge = {};      // nothing: no Bluetooth in this program
  std::function<std::unique_ptr<ports::TagCamera>()> makeCamera = {};         // nothing: tags are scanned by hand or typed
  std::function<std::unique_ptr<ports::LabelSheets>()> makeSheets = {};       // nothing: no labels are printed
  std::shared_ptr<ports::Outbox> outbox = nullptr;                            // none: what is printed stays in memory
  std::function<std::unique_ptr<ports::PhotoCamera>()> makePhotoCamera = {};  // nothing: photos are chosen as files
  std::function<std::unique_ptr<ports::PhotoMaker>()> makePhotoMaker = {};    // nothing: no photos are taken
  std::function<std::unique_ptr<ports::NfcReader>()> makeNfc = {};            // nothing: no NFC in this program
};
struct Places {
  QString book;     // made when missing
  QString choices;  // settings of this device; empty keeps them in memory
  QString phone;    // where an athlete's own phone is kept; empty: this program is none
  book::TeamFounded ifMissing;
};

class Composition {
 public:
  Composition(Edges edges, const Places& places);
  ~Composition();
  Composition(const Composition&) = delete;
  Composition& operator=(const Composition&) = delete;

  // Begins to open the Book and loads the window's contents; the first screen shows once the Book is open.
  void load();
  [[nodiscard]] QQuickView& view() { return *m_view; }
  [[nodiscard]] models::Desk& desk() { return *m_desk; }
  [[nodiscard]] models::Shell& shell() { return *m_shell; }
  [[nodiscard]] models::Choices& choices() { return *m_choices; }

 private:
  void chooseLanguage();

  Places m_places;
  std::unique_ptr<models::Choices> m_choices;
  std::unique_ptr<models::Desk> m_desk;
  std::unique_ptr<models::Shell> m_shell;
  std::unique_ptr<QQuickView> m_view;
  QString m_language;                      // that the glass speaks
  std::unique_ptr<QQmlComponent> m_ahead;  // the board's parts, kept read for the first time it is shown
};

// To be called before the application object: style, smooth edges.
void prepare();
// To be called after it: plural forms and words of our language, English until a Composition says otherwise.
void installWords();
// The words and the locale of another language, "en" or "es".
void speak(const QString& language);

}  // namespace snugline::app
