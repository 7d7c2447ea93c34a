#pragma once

#include <QWidget>

#include "indexer/rules/consent.h"

class QLabel;
class QPushButton;

namespace quarterturn {

class StandingMark;

// One use: what is true of it today, and the buttons that change it.
class UseRow : public QWidget {
    Q_OBJECT
  public:
    explicit UseRow(Use use, QWidget* parent = nullptr);

    Use use() const { return use_; }
    void show_standing(const StandingConsent& consent);
    QPushButton& button(ConsentSaid said) const;

  signals:
    void asked(quarterturn::Use use, quarterturn::ConsentSaid said);

  private:
    QPushButton* make(const QString& text, ConsentSaid said);
    void make_as_wide_as_each_other();

    Use use_;
    StandingMark* mark_;
    QLabel* name_;
    QLabel* standing_;
    QLabel* told_;
    QPushButton* grant_;
    QPushButton* decline_;
    QPushButton* withdraw_;
};

}  // namespace quarterturn
