#pragma once

#include <QStringList>
#include <QWidget>

#include "ui/wedding_morning/board_type.h"

namespace quarterturn {

// What a line of the board is about, told by a shape before its words.
enum class LineMark { caution, heat, sealed, open, changed, accessory, speech };

// A mark and sentences that wrap, each from a line of its own.
class MarkedLine : public QWidget {
    Q_OBJECT
  public:
    MarkedLine(LineMark mark, const QString& words, const BoardType& type,
               BoardRole role = BoardRole::body, QWidget* parent = nullptr)
        : MarkedLine(mark, QStringList{words}, type, role, parent) {}
    MarkedLine(LineMark mark, const QStringList& lines, const BoardType& type,
               BoardRole role = BoardRole::body, QWidget* parent = nullptr);

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    LineMark mark_;
    int side_;
    int top_;
};

}  // namespace quarterturn
