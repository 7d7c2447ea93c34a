#pragma once

#include <QFrame>
#include <QStringList>

#include "ui/wedding_morning/board_type.h"

class QScrollArea;

namespace quarterturn {

// What to beware of with this client: one box under one mark, before anything else.
class ClientCautions : public QFrame {
    Q_OBJECT
  public:
    explicit ClientCautions(const BoardType& type, QWidget* parent = nullptr);

    void show_cautions(const QStringList& cautions);
    int wanted_height(int width) const;  // for all of them, so wide
    // What needs more than so many pixels scrolls.
    void limit(int height);

  protected:
    void resizeEvent(QResizeEvent* event) override;

  private:
    void fit();

    BoardType type_;
    QStringList cautions_;
    QScrollArea* scroll_ = nullptr;
    int at_most_ = 0;
};

}  // namespace quarterturn
