#pragma once

#include <QFileSystemWatcher>
#include <QObject>
#include <QTimer>
#include <memory>

#include "indexer/intake/arriving.h"
#include "indexer/intake/import.h"

namespace quarterturn {

class Job;
class Session;

// Takes photos in as they arrive in a folder, while she goes on working. It belongs to the session,
// so that it goes on while she looks at other screens.
class FolderWatch : public QObject {
    Q_OBJECT
  public:
    // The one of this session.
    static FolderWatch& of(Session& session);
    ~FolderWatch() override;

    void start(const Path& folder);
    void stop();  // what arrived is kept

    const Path& folder() const { return folder_; }  // empty while nothing is watched
    Path watched_before() const;  // until the program or the library was closed; or empty
    int brought_in() const { return brought_in_; }  // since it was started
    const std::vector<RefusedFile>& refused() const { return refused_; }
    QString problem() const { return problem_; }  // why it does not go on; empty when it does

  signals:
    void changed();

  private:
    explicit FolderWatch(Session& session);

    void end();
    void look();
    bool is_there();  // says so where it is not
    void keep(const ImportReport& report);

    Session& session_;
    QFileSystemWatcher watcher_;
    QTimer timer_;
    Path folder_;
    std::shared_ptr<ArrivingFiles> arriving_;
    int brought_in_ = 0;
    std::vector<RefusedFile> refused_;
    QString problem_;
    std::unique_ptr<Job> job_;
};

}  // namespace quarterturn
