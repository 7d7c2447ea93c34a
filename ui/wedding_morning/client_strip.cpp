#include "ui/wedding_morning/client_strip.h"

#include <QHBoxLayout>
#include <QScroller>

#include "ui/theme/theme.h"
#include "ui/wedding_morning/client_tile.h"

namespace quarterturn {

ClientStrip::ClientStrip(const BoardType& type, QWidget* parent)
    : QScrollArea(parent), type_(type) {
    setWidgetResizable(true);
    setFrameShape(QFrame::NoFrame);
    setFocusPolicy(Qt::NoFocus);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    setAccessibleName(tr("Clients in the order of work"));
    QScroller::grabGesture(viewport(), QScroller::TouchGesture);
}

void ClientStrip::build(const std::vector<BoardClient>& clients) {
    tiles_.clear();
    auto* content = new QWidget;
    content->setProperty("kind", QStringLiteral("page"));
    auto* row = new QHBoxLayout(content);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(type_.px(0.4));
    for (const BoardClient& client : clients) {
        const std::size_t number = tiles_.size();
        auto* tile = new ClientTile(client, type_);
        connect(tile, &ClientTile::clicked, this, [this, number] { emit chosen(number); });
        row->addWidget(tile);
        tiles_.push_back(tile);
    }
    row->addStretch(1);
    setWidget(content);
    updateGeometry();
}

void ClientStrip::show_clients(const std::vector<BoardClient>& clients, std::size_t current) {
    if (tiles_.size() != clients.size()) build(clients);
    for (std::size_t i = 0; i < tiles_.size(); ++i) {
        tiles_[i]->show_client(clients[i]);
        tiles_[i]->setChecked(i == current);
    }
    current_ = current;
    show_current();
}

void ClientStrip::show_current() {
    if (current_ < tiles_.size()) ensureWidgetVisible(tiles_[current_], type_.px(2), 0);
}

QSize ClientStrip::sizeHint() const {
    const int height = tiles_.empty() ? type_.target() : tiles_.front()->sizeHint().height();
    return {type_.px(20), height};
}

QSize ClientStrip::minimumSizeHint() const {
    return {type_.px(10), sizeHint().height()};
}

void ClientStrip::resizeEvent(QResizeEvent* event) {
    QScrollArea::resizeEvent(event);
    show_current();
}

}  // namespace quarterturn
