#pragma once

#include <QFrame>

class QLabel;
class QVBoxLayout;

namespace quarterturn {

// A card of the settings: heading, what it is for, and its controls.
class SettingsPart : public QFrame {
    Q_OBJECT
  public:
    // Shows what is set now. What she is typing stays.
    virtual void refresh() = 0;
    // She goes on to another screen, or closes the window: keeps what she has typed.
    virtual void leave() {}

  protected:
    SettingsPart(const QString& heading, const QString& what_for);

    QVBoxLayout* column() const { return column_; }

  private:
    QVBoxLayout* column_;
};

}  // namespace quarterturn
