#pragma once

#include <QFrame>

#include "indexer/intake/to_settle.h"

class QPushButton;
class QVBoxLayout;

namespace quarterturn {

class Notice;
class PhotoPicker;
class Session;

// A device whose clock seems off: why, two pictures that would be of about the same moment, and a
// button that sets it right. She may also choose two photos of one moment herself.
class ClockPart : public QFrame {
    Q_OBJECT
  public:
    ClockPart(Session& session, const DoubtfulClock& clock, QWidget* parent = nullptr);

  private:
    void add_pictures(QVBoxLayout& column);
    void offer_pair();
    void set_clock(const ClockShift& shift);
    void decline();
    void set_by_pair();

    Session& session_;
    DoubtfulClock clock_;
    Notice* notice_;
    QVBoxLayout* pair_choice_;
    PhotoPicker* wrong_ = nullptr;
    PhotoPicker* right_ = nullptr;
    QPushButton* set_pair_ = nullptr;
};

}  // namespace quarterturn
