#include "ui/portfolio_screen/clients_seen.h"

#include <algorithm>
#include <array>

#include "indexer/intake/tagging.h"
#include "ui/client_search/client_search.h"
#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/widgets/flow_layout.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

QString people_in(const PhotoToShow& shown) {
    QStringList names;
    for (const ShownPerson& person : shown.people) names << isolated(from_utf8(person.name));
    if (names.isEmpty()) return ClientsSeen::tr("Nobody is named: say whose look it is.");
    //: the names of clients
    return ClientsSeen::tr("It shows %1.").arg(names.join(QStringLiteral(", ")));
}

}  // namespace

ClientsSeen::ClientsSeen(Session& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      people_(make_text({})),
      to_take_out_(new FlowLayout(space(1))),
      add_(make_quiet_button(tr("Another client is in it…"))),
      search_(new ClientSearch(session, tr("%1 is seen in the photo"))) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space(1));
    column->addWidget(people_);
    column->addLayout(to_take_out_);
    column->addWidget(add_, 0, Qt::AlignLeading);
    column->addWidget(search_);
    show_search(false);
    connect(add_, &QPushButton::clicked, this, [this] { show_search(search_->isHidden()); });
    connect(search_, &ClientSearch::chosen, this, &ClientsSeen::name);
}

void ClientsSeen::show_photo(const Photo& photo, const PhotoToShow& shown) {
    if (photo.id != photo_) show_search(false);
    photo_ = photo.id;
    beside_ = photo.tags.shown;
    in_it_.clear();
    people_->setText(people_in(shown));
    empty_layout(to_take_out_);
    for (const ShownPerson& person : shown.people) {
        in_it_.push_back(person.client);
        if (std::ranges::find(beside_, person.client) != beside_.end()) offer_to_take_out(person);
    }
}

void ClientsSeen::show_search(bool open) {
    search_->setVisible(open);
    if (!open) return;
    session_.attempt([this] { search_->show_names(std::nullopt); });
}

void ClientsSeen::offer_to_take_out(const ShownPerson& person) {
    //: the name of a client
    auto* button = make_quiet_button(tr("%1 is not in it").arg(isolated(from_utf8(person.name))));
    connect(button, &QPushButton::clicked, this,
            [this, client = person.client] { take_out(client); });
    to_take_out_->addWidget(button);
}

void ClientsSeen::name(ClientId client) {
    show_search(false);
    if (std::ranges::find(in_it_, client) != in_it_.end()) return;
    std::vector<ClientId> beside = beside_;
    beside.push_back(client);
    say(beside);
}

void ClientsSeen::take_out(ClientId client) {
    std::vector<ClientId> beside = beside_;
    std::erase(beside, client);
    say(beside);
}

void ClientsSeen::say(const std::vector<ClientId>& beside) {
    session_.change_photos([photo = photo_, &beside](Library& library) {
        tag(library, std::array{photo}, {.shown = beside});
    });
}

}  // namespace quarterturn
