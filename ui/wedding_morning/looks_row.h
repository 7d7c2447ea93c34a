#pragma once

#include <QStringList>
#include <QWidget>

#include "ui/wedding_morning/board_type.h"
#include "ui/wedding_morning/board_words.h"

class QPushButton;

namespace quarterturn {

class FlowLayout;

// Her looks for the wedding, where there is more than one to choose from.
class LooksRow : public QWidget {
    Q_OBJECT
  public:
    explicit LooksRow(const BoardType& type, QWidget* parent = nullptr);

    // The same looks keep the keyboard.
    void show_looks(const std::vector<BoardLook>& looks, std::size_t chosen);

  signals:
    void chosen(std::size_t look);

  private:
    void build();

    BoardType type_;
    QStringList looks_;
    FlowLayout* row_;
    std::vector<QPushButton*> buttons_;
};

}  // namespace quarterturn
