#pragma once
// Long work on a thread of its own, with a library connection of its own where it needs one, that
// can be paused and stopped.

#include <QObject>
#include <chrono>
#include <condition_variable>
#include <functional>
#include <mutex>
#include <optional>
#include <stop_token>
#include <thread>

#include "indexer/store/library.h"
#include "ui/threads/mailbox.h"

namespace quarterturn {

struct JobProgress {
    qint64 done = 0;
    qint64 total = 0;
    QString file;
    std::optional<std::chrono::seconds> left;
};

class Job : public QObject {
    Q_OBJECT
  public:
    // What the work does with its library; it answers what the window is to do with the outcome,
    // which is then called on the window's thread.
    using Work = std::function<std::function<void()>(Library&, Job&)>;

    // The same for what makes or changes a library as a whole.
    using WorkWithoutLibrary = std::function<std::function<void()>(Job&)>;

    Job(Path library_folder, FileSystem& disk, Work work, QObject* parent = nullptr);
    explicit Job(WorkWithoutLibrary work, QObject* parent = nullptr);
    ~Job() override;  // stops the work and waits for it

    // From the window.
    void pause(bool pause);
    void stop();

    // From the work. progress() waits while she has paused.
    void progress(const JobProgress& progress);
    std::stop_token stop_token() const { return stop_.get_token(); }

  signals:
    void progressed(const quarterturn::JobProgress& progress);
    void failed(const QString& sentence);
    void ended();  // after the outcome was dealt with, or failed()

  private:
    void run(const WorkWithoutLibrary& work);
    void wait_while_paused();

    std::stop_source stop_;
    std::mutex mutex_;
    std::condition_variable changed_;
    bool paused_ = false;
    Mailbox mailbox_;
    std::jthread thread_;
};

}  // namespace quarterturn
