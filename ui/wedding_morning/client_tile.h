#pragma once

#include "ui/wedding_morning/board_type.h"
#include "ui/wedding_morning/board_words.h"
#include "ui/widgets/text_button.h"

namespace quarterturn {

// One client in the strip: the ring of her first look, her name, what she is and when she must be
// ready, how much is done. Who is on the board stands on a wash over a thick line.
class ClientTile : public TextButton {
    Q_OBJECT
  public:
    ClientTile(const BoardClient& client, const BoardType& type, QWidget* parent = nullptr);

    void show_client(const BoardClient& client);

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override { return sizeHint(); }

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    int ring_side() const;
    QRect words_area() const;
    void draw_lines(QPainter& painter) const;

    BoardType type_;
    std::optional<Ring> ring_;
    QString below_;
};

}  // namespace quarterturn
