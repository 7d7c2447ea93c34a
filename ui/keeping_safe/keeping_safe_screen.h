#pragma once

#include <vector>

#include "ui/shell/screen.h"

namespace quarterturn {

class CardPart;
class WorkPart;

// Backups, checking, what may be deleted from a card, and a library made again: what keeps her work
// from being lost.
class KeepingSafeScreen : public Screen {
    Q_OBJECT
  public:
    explicit KeepingSafeScreen(Session& session);

    QString help() const override;
    void refresh() override;
    void arrive(const Place& place) override;

  private:
    CardPart* card_;
    std::vector<WorkPart*> parts_;
};

}  // namespace quarterturn
