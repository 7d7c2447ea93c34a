#pragma once

#include <QWidget>
#include <optional>

#include "indexer/looks/round_the_head.h"

class QLabel;
class QScrollArea;

namespace quarterturn {

class FlowLayout;
class PhotoTile;
class SentenceLink;
class Session;

// The photos that wait for their place, in the order of time; each can be taken in hand or dragged
// to the head plan.
class Tray : public QWidget {
    Q_OBJECT
  public:
    explicit Tray(Session& session, QWidget* parent = nullptr);

    void show_waiting(const std::vector<WaitingPhoto>& waiting, std::optional<PhotoId> in_hand);

  signals:
    void taken(PhotoId photo);

  protected:
    void resizeEvent(QResizeEvent* event) override;

  private:
    bool shows_the_same(const std::vector<WaitingPhoto>& waiting) const;
    void build_tiles(const std::vector<WaitingPhoto>& waiting);
    void show_pictures();
    void want_what_is_seen();
    void show_picture(PhotoTile& tile);

    Session& session_;
    QLabel* heading_;
    QLabel* nothing_;
    SentenceLink* more_;
    QScrollArea* scroll_;
    FlowLayout* flow_;
    std::vector<WaitingPhoto> waiting_;
    std::vector<PhotoTile*> tiles_;
    PhotoTile* in_hand_ = nullptr;
};

}  // namespace quarterturn
