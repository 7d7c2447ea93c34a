#pragma once

#include <QWidget>
#include <memory>

#include "indexer/store/library.h"

class QVBoxLayout;

namespace quarterturn {

class Job;
class Notice;
class ProgressPanel;
class Session;

// What stands there while no library is open: start one, open one, make one again from a backup, or
// try the demo.
class WelcomePage : public QWidget {
    Q_OBJECT
  public:
    explicit WelcomePage(Session& session, QWidget* parent = nullptr);
    ~WelcomePage() override;

    void try_demo();
    // Into a new or empty folder, which is opened then.
    void restore_from(const Path& backup, const Path& folder);

  private:
    QWidget* build_new();
    QWidget* build_open();
    QWidget* build_restore();
    QWidget* build_demo();
    void open_existing();
    void open_or_say(const Path& folder);
    void choose_backup();
    void fill_demo(const Path& folder, const Path& demo_photos);
    void show_work(const QString& what, std::unique_ptr<Job> job);

    Session& session_;
    QVBoxLayout* column_;
    Notice* notice_;
    ProgressPanel* progress_ = nullptr;
    QWidget* choices_;
    std::unique_ptr<Job> job_;
};

}  // namespace quarterturn
