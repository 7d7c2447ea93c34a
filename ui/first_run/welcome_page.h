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
class UnlockPart;
struct ClosedWork;
struct RestoreReport;

// What stands there while no library is open: start one, open one, make one again from a backup, or
// try the demo.
class WelcomePage : public QWidget {
    Q_OBJECT
  public:
    explicit WelcomePage(Session& session, QWidget* parent = nullptr);
    ~WelcomePage() override;

    void try_demo();
    // Into a new or empty folder, which is opened then.
    void restore_or_ask(const Path& backup, const Path& folder);
    // Asks for its passphrase where it has a lock.
    void open_or_ask(const Path& folder);

  private:
    QWidget* build_new();
    QWidget* build_open();
    QWidget* build_restore();
    QWidget* build_demo();
    void open_existing();
    void open_or_say(const Path& folder);
    void choose_backup();
    // `words`: the passphrase or recovery key of a locked backup; empty where it has no lock.
    void restore_from(const Path& backup, const Path& folder, const std::string& words);
    void show_restored(const RestoreReport& report);
    void ask_passphrase(const Path& folder);
    void ask_words_for(const Path& folder, const std::function<void(const std::string&)>& go_on);
    void do_closed_work(const ClosedWork& work);
    void show_progress_of(Job& job, const QString& title);
    void show_choices();
    void fill_demo(const Path& folder, const Path& demo_photos);

    Session& session_;
    QVBoxLayout* column_;
    Notice* notice_;
    ProgressPanel* progress_ = nullptr;
    QWidget* choices_;
    UnlockPart* unlock_ = nullptr;
    std::unique_ptr<Job> job_;
};

}  // namespace quarterturn
