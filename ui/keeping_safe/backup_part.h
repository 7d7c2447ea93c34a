#pragma once

#include <memory>
#include <optional>
#include <set>

#include "indexer/backup/backup.h"
#include "ui/keeping_safe/work_part.h"

class QComboBox;

namespace quarterturn {

class Job;

// The backups that were made, and the next one.
class BackupPart : public WorkPart {
    Q_OBJECT
  public:
    explicit BackupPart(Session& session);
    ~BackupPart() override;

    void refresh() override;
    // Also from a test, in place of the system's dialog.
    void back_up_to(const Path& folder, bool read_all = false);

  private:
    void add_backup(const Backup& backup);
    void add_ways(const std::vector<Backup>& known);
    void look_at_locks(const std::vector<Backup>& known);
    bool takes_no_more(const Backup& backup) const;
    void forget(const Backup& backup);
    void ask_before(std::optional<BackupId> to_forget);  // nothing: no more
    void choose();
    QLayout* build_reminder();
    void offer_days(int days);
    void choose_days();

    QComboBox* days_;
    std::optional<BackupId> to_forget_;  // she pressed once
    std::set<Path> locked_otherwise_;    // folders that take no more, as of the last look
    bool looking_ = false;
    std::unique_ptr<Job> look_;          // goes on, since a drive may take its time
};

}  // namespace quarterturn
