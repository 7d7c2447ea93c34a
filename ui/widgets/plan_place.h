#pragma once

#include <QAbstractButton>
#include <optional>

#include "indexer/record/id.h"
#include "indexer/record/words.h"
#include "ui/widgets/draw_photo.h"

namespace quarterturn {

// What lies at one angle of the head plan.
struct PlanPlaceState {
    std::optional<Coverage> verdict;  // nothing when the shot list does not ask for this angle
    Need need = Need::required;
    PhotoLook photo{};  // the place makes its caption; no picture when no photo lies here
    bool has_photo = false;
    int photos = 0;          // how many lie here
    bool suggested = false;  // where the current photo would go
};

// A place round the head where the camera stood: a photo, or an empty frame with the angle's name.
// Takes dropped photos. Arrow keys are left to the screen.
class PlanPlace : public QAbstractButton {
    Q_OBJECT
  public:
    PlanPlace(Angle angle, QWidget* parent);

    Angle angle() const { return angle_; }
    void show_state(const PlanPlaceState& state);
    int least_width() const;  // for the name of its angle

  signals:
    void dropped(const std::vector<PhotoId>& photos);

  protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dragLeaveEvent(QDragLeaveEvent* event) override;
    void dropEvent(QDropEvent* event) override;

  private:
    void draw_empty(QPainter& painter) const;
    void draw_gap(QPainter& painter, const QRect& words) const;
    QString standing() const;  // "left, covered"
    QString caption() const;
    QString words_of_gap() const;

    Angle angle_;
    PlanPlaceState state_;
    bool photo_above_ = false;
};

}  // namespace quarterturn
