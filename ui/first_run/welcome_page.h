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

// What stands there while no library is open: start one, open one, or try the demo.
class WelcomePage : public QWidget {
    Q_OBJECT
  public:
    explicit WelcomePage(Session& session, QWidget* parent = nullptr);
    ~WelcomePage() override;

    void try_demo();

  private:
    QWidget* build_new();
    QWidget* build_open();
    QWidget* build_demo();
    void open_existing();
    void open_or_say(const Path& folder);
    void fill_demo(const Path& folder, const Path& demo_photos);

    Session& session_;
    QVBoxLayout* column_;
    Notice* notice_;
    ProgressPanel* progress_ = nullptr;
    QWidget* choices_;
    std::unique_ptr<Job> job_;
};

}  // namespace quarterturn
