#pragma once

#include <QObject>
#include <stop_token>
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
    ~LaterFound() override;

    void look_for(const PhotoSearch& search);  // in place of one before
    void forget();                             // what is under way gives up

  signals:
    void found(const std::vector<quarterturn::FoundPhoto>& photos);
    void failed(const QString& sentence);

  private:
    void hand_over(const std::vector<FoundPhoto>& photos, const QString& problem);

    Session& session_;
    std::stop_source wanted_;  // stopped when the search is no longer wanted
};

}  // namespace quarterturn
