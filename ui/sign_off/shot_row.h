#pragma once

#include <QWidget>

#include "indexer/looks/look_state.h"

class QVBoxLayout;

namespace quarterturn {

class PhotoTile;
class Session;

// One line of the shot list with its photo or its gap.
class ShotRow : public QWidget {
    Q_OBJECT
  public:
    ShotRow(Session& session, const LookState& state, const CoverageLine& line,
            QWidget* parent = nullptr);

    const std::optional<Photo>& photo() const { return photo_; }
    void show_picture();

  private:
    QWidget* build_picture();
    void add_words(QVBoxLayout& column);
    void add_waiving(QVBoxLayout& column);
    void go_there();

    Session& session_;
    LookId look_;
    CoverageLine line_;
    std::optional<Photo> photo_;
    PhotoTile* tile_ = nullptr;
};

}  // namespace quarterturn
