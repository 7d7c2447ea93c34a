#pragma once

#include <QWidget>
#include <functional>
#include <vector>

#include "ui/shell/place.h"

namespace quarterturn {

class Session;

// One moment of her job. A screen is made the first time she goes there; from then on the window
// tells it when to look at the records again. It is only ever shown while a library is open.
class Screen : public QWidget {
    Q_OBJECT
  public:
    using QWidget::QWidget;

    // What one can do here and the keys for it, in a few lines of plain text.
    virtual QString help() const = 0;

    // Shows what the records say now. Called before the screen is shown, and while it is on screen
    // after each change of the records. Must not wait for disks or decode pictures.
    virtual void refresh() = 0;

    // She was led here, to this look or photo. Called before refresh().
    virtual void arrive(const Place& place);

    // It fills the whole screen from now on, without the row of moments, or no longer.
    virtual void stand_alone(bool alone);

    // What fills the whole screen is for a client's eyes: nothing of the stylist's may be said
    // beside it.
    virtual bool is_for_client() const { return false; }

  signals:
    void alone_asked(bool alone);  // to fill the whole screen, or no longer

  protected:
    // Where a screen stands in no window, Tab goes in reading order all the same.
    bool focusNextPrevChild(bool next) override;
};

// A screen's word in the row at the top, and how to make it.
struct ScreenEntry {
    Moment moment;
    QString title;
    std::function<Screen*(Session&)> make;
};

}  // namespace quarterturn
