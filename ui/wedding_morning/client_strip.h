#pragma once

#include <QScrollArea>
#include <vector>

#include "ui/wedding_morning/board_type.h"
#include "ui/wedding_morning/board_words.h"

namespace quarterturn {

class ClientTile;

// The clients in the order of work, in one line that scrolls sideways where they are many.
class ClientStrip : public QScrollArea {
    Q_OBJECT
  public:
    explicit ClientStrip(const BoardType& type, QWidget* parent = nullptr);

    void show_clients(const std::vector<BoardClient>& clients, std::size_t current);

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

  signals:
    void chosen(std::size_t client);

  protected:
    void resizeEvent(QResizeEvent* event) override;

  private:
    void build(const std::vector<BoardClient>& clients);
    void show_current();

    BoardType type_;
    std::vector<ClientTile*> tiles_;
    std::size_t current_ = 0;
};

}  // namespace quarterturn
