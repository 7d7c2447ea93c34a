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

// What stands there while no library is open: start one, open one, or try the demo.
class WelcomePage : public QWidget {
    Q_OBJECT
  public:
    explicit WelcomePage(Session& session, QWidget* parent = nullptr);
    ~WelcomePage() override;

    void try_demo();
    // Asks for its passphrase where it has a lock.
    void open_or_ask(const Path& folder);

  private:
    QWidget* build_new();
    QWidget* build_open();
    QWidget* build_demo();
    void open_existing();
    void open_or_say(const Path& folder);
    void ask_passphrase(const Path& folder);
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
