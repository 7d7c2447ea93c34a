#pragma once

#include "indexer/record/paper.h"
#include "ui/settings/settings_part.h"

class QButtonGroup;

namespace quarterturn {

class Session;

// The paper that sheets are laid out for unless she chooses another.
class PaperPart : public SettingsPart {
    Q_OBJECT
  public:
    explicit PaperPart(Session& session);

    void refresh() override;

  private:
    void choose(Paper paper);

    Session& session_;
    QButtonGroup* papers_;
};

}  // namespace quarterturn
