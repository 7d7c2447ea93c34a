#pragma once

#include "ui/settings/settings_part.h"

namespace quarterturn {

class Notice;
class Session;

// The library that is open: where it lies, and the way to another or a new one.
class LibraryPart : public SettingsPart {
    Q_OBJECT
  public:
    explicit LibraryPart(Session& session);

    void refresh() override;

  private:
    void show_folder();
    void open_another();

    Session& session_;
    QLabel* folder_;
    Notice* notice_;
};

}  // namespace quarterturn
