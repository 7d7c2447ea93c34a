#pragma once

#include "indexer/backup/verify.h"
#include "ui/keeping_safe/work_part.h"

namespace quarterturn {

// Whether every file is still as it was put there.
class CheckPart : public WorkPart {
    Q_OBJECT
  public:
    explicit CheckPart(Session& session);

    void refresh() override;

  private:
    void check(bool from_start);
};

}  // namespace quarterturn
