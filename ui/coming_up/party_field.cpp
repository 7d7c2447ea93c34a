#include "ui/coming_up/party_field.h"

#include <QComboBox>
#include <QCompleter>
#include <QLineEdit>

#include "ui/theme/theme.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

// A name that can be chosen from those known or typed anew.
QComboBox* make_name_field(const QStringList& known_names, const QString& name) {
    auto* field = new QComboBox;
    field->setEditable(true);
    field->setInsertPolicy(QComboBox::NoInsert);
    field->addItems(known_names);
    field->completer()->setCompletionMode(QCompleter::PopupCompletion);
    field->completer()->setFilterMode(Qt::MatchContains);
    field->setCurrentText(name);
    return field;
}

std::map<QString, ClientId> told_apart(const std::vector<Client>& clients) {
    std::map<std::string, int> bearers;
    for (const Client& client : clients) ++bearers[client.name];
    std::map<QString, ClientId> names;
    for (const Client& client : clients) {
        QString name = from_utf8(client.name);
        //: two clients bear one name: the name, and the client's number
        if (bearers[client.name] > 1)
            name = PartyField::tr("%1 (client %2)").arg(name).arg(client.id.value);
        names.emplace(name, client.id);
    }
    return names;
}

}  // namespace

PartyField::PartyField(const std::vector<Client>& known, QWidget* parent)
    : QWidget(parent), known_(told_apart(known)), rows_layout_(make_column()) {
    QPushButton* add = make_quiet_button(tr("Add someone to the party"));
    connect(add, &QPushButton::clicked, this, [this] {
        add_member(QString());
        rows_.back().name->setFocus();
    });
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space(2));
    column->addLayout(rows_layout_);
    column->addWidget(add, 0, Qt::AlignLeading);
}

void PartyField::add_member(const QString& role) {
    add_row({}, role);
}

void PartyField::add_member(const PartyMember& member) {
    const auto known =
        std::ranges::find(known_, member.client, &std::pair<const QString, ClientId>::second);
    add_row(known == known_.end() ? QString() : known->first, from_utf8(member.role));
}

void PartyField::add_row(const QString& name, const QString& role) {
    QStringList names;
    for (const auto& [known, id] : known_) names << known;
    Row row{new QWidget, make_name_field(names, name), new QLineEdit(role)};
    row.name->setAccessibleName(tr("Name"));
    row.role->setAccessibleName(tr("Role in the party"));
    row.role->setPlaceholderText(tr("bride, bridesmaid, mother …"));
    QPushButton* remove = make_quiet_button(tr("Remove"));
    remove->setAccessibleName(tr("Remove %1 from the party").arg(name));
    connect(remove, &QPushButton::clicked, this,
            [this, widget = row.widget] { remove_row(widget); });
    auto* layout = new QHBoxLayout(row.widget);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(row.name, 3);
    layout->addWidget(row.role, 2);
    layout->addWidget(remove);
    rows_layout_->addWidget(row.widget);
    rows_.push_back(row);
}

void PartyField::remove_row(QWidget* widget) {
    std::erase_if(rows_, [&](const Row& row) { return row.widget == widget; });
    widget->hide();
    widget->deleteLater();
}

std::vector<NamedMember> PartyField::members() const {
    std::vector<NamedMember> members;
    for (const Row& row : rows_) {
        NamedMember member = member_in(row);
        if (!member.name.empty()) members.push_back(std::move(member));
    }
    return members;
}

NamedMember PartyField::member_in(const Row& row) const {
    const QString name = row.name->currentText().trimmed();
    NamedMember member{to_utf8(name), to_utf8(row.role->text().trimmed())};
    if (const auto known = known_.find(name); known != known_.end()) member.client = known->second;
    return member;
}

}  // namespace quarterturn
