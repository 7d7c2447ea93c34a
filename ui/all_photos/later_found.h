#pragma once

#include <QObject>
#include <vector>

#include "indexer/store/library.h"

class QThread;

namespace quarterturn {

class Session;

// Finds all photos of a search on a thread of its own, while the first of them are looked at.
class LaterFound : public QObject {
    Q_OBJECT
  public:
    explicit LaterFound(Session& session, QObject* parent = nullptr);
    ~LaterFound() override;  // waits for a search that is under way

    void look_for(const PhotoSearch& search);  // in place of one before
    void forget();

  signals:
    void found(const std::vector<quarterturn::FoundPhoto>& photos);
    void failed(const QString& sentence);

  private:
    void hand_over(int number, const std::vector<FoundPhoto>& photos, const QString& problem);

    Session& session_;
    int number_ = 0;  // of the search that is wanted
};

}  // namespace quarterturn
