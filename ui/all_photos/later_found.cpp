#include "ui/all_photos/later_found.h"

#include <QThread>

#include "ui/shell/session.h"

namespace quarterturn {

LaterFound::LaterFound(Session& session, QObject* parent) : QObject(parent), session_(session) {}

LaterFound::~LaterFound() {
    for (QThread* thread : findChildren<QThread*>()) thread->wait();
}

void LaterFound::look_for(const PhotoSearch& search) {
    struct Answer {
        std::vector<FoundPhoto> photos;
        QString problem;
    };
    auto answer = std::make_shared<Answer>();
    const auto work = [answer, search, folder = session_.library().folder(),
                       &disk = session_.disk()] {
        try {
            Library library = Library::open_or_look(folder, disk);
            answer->photos = library.search().find(search);
        } catch (const std::exception& problem) {
            answer->problem = QString::fromUtf8(problem.what());
        }
    };
    QThread* thread = QThread::create(work);
    thread->setParent(this);
    connect(thread, &QThread::finished, this, [this, answer, thread, number = ++number_] {
        thread->deleteLater();
        hand_over(number, answer->photos, answer->problem);
    });
    thread->start(QThread::LowPriority);
}

void LaterFound::forget() {
    ++number_;
}

void LaterFound::hand_over(int number, const std::vector<FoundPhoto>& photos,
                           const QString& problem) {
    if (number != number_) return;  // she looks for something else by now
    if (problem.isEmpty()) {
        emit found(photos);
    } else {
        emit failed(problem);
    }
}

}  // namespace quarterturn
