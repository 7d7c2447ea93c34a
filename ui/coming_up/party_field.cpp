#include "ui/coming_up/party_field.h"

#include <QComboBox>
#include <QCompleter>
#include <QLineEdit>

#include "ui/theme/theme.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/words.h"

namespace quarterturn {

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

PartyField::PartyField(const QStringList& known_names, QWidget* parent)
    : QWidget(parent), known_names_(known_names), rows_layout_(make_column()) {
    QPushButton* add = make_quiet_button(tr("Add someone to the party"));
    connect(add, &QPushButton::clicked, this, [this] {
        add_member({}, {});
        rows_.back().name->setFocus();
    });
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space(2));
    column->addLayout(rows_layout_);
    column->addWidget(add, 0, Qt::AlignLeading);
}

void PartyField::add_member(const QString& name, const QString& role) {
    Row row{new QWidget, make_name_field(known_names_, name), new QLineEdit(role)};
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
        const QString name = row.name->currentText().trimmed();
        if (name.isEmpty()) continue;
        members.push_back({to_utf8(name), to_utf8(row.role->text().trimmed())});
    }
    return members;
}

}  // namespace quarterturn
