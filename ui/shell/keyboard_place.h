#pragma once

#include <QPointer>
#include <QWidget>

namespace quarterturn {

// Where the keyboard is, told so that it is found again after the controls were made anew: by kind,
// name, and which one of that name it is. Holds also while another window is in front.
class KeyboardPlace {
  public:
    explicit KeyboardPlace(const QWidget& part);  // as it is now below `part`

    // Gives the keyboard back and scrolls to it, when it was below the part, is no longer where it
    // was, and there is such a control.
    void come_back(QWidget& part) const;

  private:
    QPointer<QWidget> control_;
    const QMetaObject* kind_ = nullptr;
    QString name_;
    qsizetype number_ = 0;
};

}  // namespace quarterturn
