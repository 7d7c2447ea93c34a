#include "ui/client_search/client_search.h"

#include <QLineEdit>

#include "indexer/store/text.h"
#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/widgets/flow_layout.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

constexpr int most_names = 12;

}  // namespace

ClientSearch::ClientSearch(Session& session, const QString& leads_to, QWidget* parent)
    : QWidget(parent),
      session_(session),
      leads_to_(leads_to),
      words_(new QLineEdit),
      names_(new FlowLayout(space(1))),
      rest_(make_quiet({})) {
    words_->setPlaceholderText(tr("Search by name"));
    words_->setAccessibleName(tr("Search a client by name"));
    words_->setMaximumWidth(space(90));
    connect(words_, &QLineEdit::textChanged, this,
            [this] { session_.attempt([this] { look_again(); }); });
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space(2));
    column->addWidget(words_);
    column->addLayout(names_);
    column->addWidget(rest_);
}

void ClientSearch::show_names(std::optional<ClientId> current) {
    current_ = current;
    look_again();
}

void ClientSearch::look_again() {
    std::vector<Client> found = session_.library().clients().all();
    const std::string wanted = folded(to_utf8(words_->text().trimmed()));
    std::erase_if(found, [&](const Client& client) {
        return folded(client.name).find(wanted) == std::string::npos;
    });
    const int more = std::max(0, static_cast<int>(found.size()) - most_names);
    rest_->setText(found.empty() ? tr("Nobody of this name is in the library.")
                                 : tr("And %n more: write more of the name.", nullptr, more));
    rest_->setVisible(found.empty() || more > 0);
    found.resize(found.size() - static_cast<std::size_t>(more));
    offer(std::move(found));
}

// Names that stay keep the keyboard.
void ClientSearch::offer(std::vector<Client> clients) {
    if (clients != offered_) {
        offered_ = std::move(clients);
        empty_layout(names_);
        buttons_.clear();
        for (const Client& client : offered_) add_name(client);
    }
    for (const auto& [client, button] : buttons_) {
        show_kind(*button, client == current_ ? QStringLiteral("chosen") : QStringLiteral("quiet"));
    }
}

void ClientSearch::add_name(const Client& client) {
    QPushButton* name = make_quiet_button(from_utf8(client.name));
    name->setAccessibleName(leads_to_.arg(name->text()));
    connect(name, &QPushButton::clicked, this, [this, id = client.id] { emit chosen(id); });
    names_->addWidget(name);
    buttons_[client.id] = name;
}

}  // namespace quarterturn
