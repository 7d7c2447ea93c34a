#pragma once

#include <QFrame>

#include "ui/wedding_morning/board_type.h"

class QCheckBox;
class QHBoxLayout;
class QLineEdit;
class QSpinBox;

namespace quarterturn {

class FlowLayout;
class Notice;

// Asks for a timer of her own, and how the end of one is to be told.
class OwnTimer : public QFrame {
    Q_OBJECT
  public:
    explicit OwnTimer(const BoardType& type, QWidget* parent = nullptr);

    void ask();
    void say(const QString& problem);

  signals:
    void wanted(const QString& name, int minutes);
    void closed();

  private:
    void add_wishes(FlowLayout& row);
    void start();

    BoardType type_;
    QLineEdit* name_;
    QSpinBox* minutes_;
    QCheckBox* sound_;
    QCheckBox* flash_;
    Notice* notice_;
};

}  // namespace quarterturn
