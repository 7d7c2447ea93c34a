#pragma once

#include <QWidget>

#include "indexer/looks/kit_list.h"

class QCheckBox;
class QLabel;

namespace quarterturn {

class Notice;

// A line of the kit list: a box to tick, what it is, how many and what for. A click anywhere on it
// ticks; where there is more to pack since, it says so and asks whether that is packed too.
class KitRow : public QWidget {
    Q_OBJECT
  public:
    explicit KitRow(const KitLine& line, QWidget* parent = nullptr);

    const KitLine& line() const { return line_; }
    void show_line(const KitLine& line);

  signals:
    // To be packed as many as the line says, or, with `packed` false, not packed after all.
    void ticked(bool packed);

  protected:
    void paintEvent(QPaintEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    QWidget* build_growth();

    KitLine line_;
    QCheckBox* box_;
    QLabel* what_;
    QLabel* about_;
    Notice* grown_;
    QWidget* growth_;
};

}  // namespace quarterturn
