#pragma once
// The heart of the window: the head seen from above, as she stands behind the chair, with a ring of
// four quarters that fill as angles are covered and the photos lying round it where the camera
// stood. Front is at the top and the client's left is on the left, also where text runs from right
// to left.

#include <QWidget>
#include <array>
#include <map>

#include "ui/widgets/plan_place.h"

namespace quarterturn {

class HeadPlan : public QWidget {
    Q_OBJECT
  public:
    explicit HeadPlan(QWidget* parent = nullptr);

    void show_ring(const Ring& ring);
    void show_place(Angle angle, const PlanPlaceState& state);
    PlanPlace* place(Angle angle) const { return places_.at(angle); }

    // How large the picture at this angle is drawn now, device-independent px: what to load.
    QSize place_size(Angle angle) const { return places_.at(angle)->size(); }

    QSize sizeHint() const override { return {720, 560}; }
    QSize minimumSizeHint() const override { return {420, 340}; }

  signals:
    void chosen(Angle angle);  // a place or a quarter of the ring was clicked or pressed
    void dropped(Angle angle, const std::vector<PhotoId>& photos);

  protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;

  private:
    void add_place(Angle angle);

    std::map<Angle, PlanPlace*> places_;
    Ring ring_{Quarter::missing, Quarter::missing, Quarter::missing, Quarter::missing};
};

}  // namespace quarterturn
