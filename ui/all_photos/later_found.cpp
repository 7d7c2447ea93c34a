#include "ui/all_photos/later_found.h"

#include <QThread>

#include "indexer/store/until_stopped.h"
#include "ui/shell/session.h"
#include "ui/widgets/said_here.h"

namespace quarterturn {

LaterFound::LaterFound(Session& session, QObject* parent) : QObject(parent), session_(session) {}

LaterFound::~LaterFound() {
    forget();
    for (QThread* thread : findChildren<QThread*>()) thread->wait();
}

void LaterFound::look_for(const PhotoSearch& search) {
    forget();
    wanted_ = {};
    struct Answer {
        std::vector<FoundPhoto> photos;
        QString problem;
    };
    auto answer = std::make_shared<Answer>();
    const auto work = [answer, search, stop = wanted_.get_token(),
                       folder = session_.library().folder(), &disk = session_.disk()] {
        try {
            Library library = Library::open_again(folder, disk);
            const UntilStopped until_stopped(library.database(), stop);
            answer->photos = library.search().find(search);
        } catch (const std::exception& problem) {
            answer->problem = said_here(problem.what());
        }
    };
    QThread* thread = QThread::create(work);
    thread->setParent(this);
    connect(thread, &QThread::finished, this, [this, answer, thread, stop = wanted_.get_token()] {
        thread->deleteLater();
        if (!stop.stop_requested()) hand_over(answer->photos, answer->problem);
    });
    thread->start(QThread::LowPriority);
}

void LaterFound::forget() {
    wanted_.request_stop();
}

void LaterFound::hand_over(const std::vector<FoundPhoto>& photos, const QString& problem) {
    if (problem.isEmpty()) {
        emit found(photos);
    } else {
        emit failed(problem);
    }
}

}  // namespace quarterturn
