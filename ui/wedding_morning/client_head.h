#pragma once

#include <QWidget>

#include "ui/wedding_morning/board_type.h"
#include "ui/wedding_morning/board_words.h"

class QBoxLayout;
class QLabel;
class QPushButton;

namespace quarterturn {

// Who is in the chair, what she is, when she must be ready and when she sits; and the way to the
// client before her and the next one.
class ClientHead : public QWidget {
    Q_OBJECT
  public:
    explicit ClientHead(const BoardType& type, QWidget* parent = nullptr);

    void show_client(const WeddingBoard& board, std::size_t client);

  signals:
    void turned(int by);  // 1: on to the next

  protected:
    void resizeEvent(QResizeEvent* event) override;

  private:
    QBoxLayout* build_words();
    QPushButton* make_turn(int by);
    void show_turn(QPushButton& button, const WeddingBoard& board, std::size_t client,
                   const QString& words);
    void fit();

    BoardType type_;
    QBoxLayout* row_;
    QLabel* name_;
    QLabel* role_;
    QLabel* chair_;
    QPushButton* previous_;
    QPushButton* next_;
};

}  // namespace quarterturn
