#pragma once

#include <QListWidget>

#include "indexer/record/photo.h"

namespace quarterturn {

class Session;

// The photos of a selection in a row, in the order they are to be shown in. Drag one to its place,
// or move it by Ctrl with an arrow key; Delete takes it out. Nothing of it can be dragged out of
// the row.
class SelectionStrip : public QListWidget {
    Q_OBJECT
  public:
    explicit SelectionStrip(Session& session, QWidget* parent = nullptr);

    void show_photos(const std::vector<Photo>& photos);
    std::vector<PhotoId> order() const;

  signals:
    void ordered(const std::vector<quarterturn::PhotoId>& photos);
    void taken_out(quarterturn::PhotoId photo);
    void looked_at(quarterturn::PhotoId photo);

  protected:
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;

  private:
    PhotoId photo_at(int row) const;
    void add(const Photo& photo);
    void move(int from, int to);

    Session& session_;
    std::map<PhotoId, Photo> photos_;
    QPoint pressed_at_;
    int carried_ = -1;  // row of the one under the pressed mouse; -1: none
    bool moved_ = false;
};

}  // namespace quarterturn
