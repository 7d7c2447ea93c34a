#pragma once

#include <QWidget>
#include <vector>

#include "indexer/record/photo.h"

class QLabel;
class QPushButton;

namespace quarterturn {

class FlowLayout;
class PhotoTile;
class Session;

// One side of a pair: the photo that stands there and those that could.
class FrameChoice : public QWidget {
    Q_OBJECT
  public:
    explicit FrameChoice(Session& session, QWidget* parent = nullptr);

    // `chosen`: by her, and not the best one that the program found.
    void show_frames(const QString& side, const std::vector<Photo>& frames, PhotoId current,
                     bool chosen);

  signals:
    void picked(quarterturn::PhotoId photo);
    void best_asked();

  private:
    void show_pictures();

    Session& session_;
    QLabel* side_;
    FlowLayout* row_;
    QPushButton* best_;
    std::vector<Photo> frames_;
    std::vector<PhotoTile*> tiles_;
    PhotoId current_;
};

}  // namespace quarterturn
