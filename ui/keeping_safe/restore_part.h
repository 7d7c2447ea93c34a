#pragma once

#include "indexer/backup/restore.h"
#include "ui/keeping_safe/work_part.h"

class QComboBox;
class QLineEdit;

namespace quarterturn {

// A library made again from a backup, in a new place: all of it, or one client's.
class RestorePart : public WorkPart {
    Q_OBJECT
  public:
    explicit RestorePart(Session& session);

    void refresh() override;
    // Both also from a test, in place of the system's dialog.
    void choose_backup(const Path& backup);
    void restore_to(const Path& folder);

  private:
    void show_backup();
    void choose_place();

    Path backup_;
    QComboBox* records_;
    QLineEdit* client_;
    QWidget* choices_;
};

}  // namespace quarterturn
