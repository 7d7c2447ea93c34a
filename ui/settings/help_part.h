#pragma once

#include "ui/printing/ways_out.h"
#include "ui/settings/settings_part.h"

namespace quarterturn {

class Notice;
class Session;

// A report for somebody who helps her with the program; it names nobody.
class HelpPart : public SettingsPart {
    Q_OBJECT
  public:
    explicit HelpPart(Session& session);

    void refresh() override {}

  private:
    void save_report();

    Session& session_;
    Notice* notice_;
    WaysOut ways_out_;
};

}  // namespace quarterturn
