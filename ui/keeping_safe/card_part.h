#pragma once

#include "indexer/backup/safe_to_delete.h"
#include "ui/keeping_safe/work_part.h"

namespace quarterturn {

// What may be deleted from a card or phone. The program itself deletes nothing.
class CardPart : public WorkPart {
    Q_OBJECT
  public:
    explicit CardPart(Session& session);

    void refresh() override;
    // The card that photos were just brought in from.
    void offer(const std::vector<Path>& sources);
    void look_at(const std::vector<Path>& sources);

  private:
    std::vector<Path> offered_;
};

}  // namespace quarterturn
