#include "ui/pairs/facts_form.h"

#include <QCompleter>
#include <QLineEdit>

#include "indexer/store/library_settings.h"
#include "ui/pairs/fact_words.h"
#include "ui/pairs/pair_edits.h"
#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

std::vector<std::string> values_in(const QString& text) {
    std::vector<std::string> values;
    for (const QString& each : text.split(u',')) {
        const QString value = each.simplified();
        if (!value.isEmpty()) values.push_back(to_utf8(value));
    }
    return values;
}

}  // namespace

FactsForm::FactsForm(Session& session, QWidget* parent) : QWidget(parent), session_(session) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space(1));
    for (const Fact fact : facts_of_look) add(*column, fact);
}

void FactsForm::add(QVBoxLayout& column, Fact fact) {
    Row row{new QLineEdit, make_quiet({}), make_quiet_button(tr("As the recipe says")), {}};
    row.values->setAccessibleName(shown(fact));
    row.values->setPlaceholderText(tr("not told"));
    row.values->setToolTip(tr("Several with commas between"));
    connect(row.values, &QLineEdit::editingFinished, this, [this, fact] { keep(fact); });
    connect(row.as_read, &QPushButton::clicked, this, [this, fact] { say(fact, {}); });
    QHBoxLayout* head = make_row(2);
    QLabel* name = make_text(shown(fact));
    for (QLabel* label : {name, row.source}) {
        label->setWordWrap(false);
        head->addWidget(label);
    }
    head->addStretch();
    column.addLayout(head);
    column.addWidget(row.values);
    column.addWidget(row.as_read, 0, Qt::AlignLeading);
    column.addSpacing(space(1));
    rows_[fact] = row;
}

void FactsForm::show_look(LookId look) {
    look_ = look;
    QStringList families;
    for (const std::string& family : look_families(session_.library().settings())) {
        families << from_utf8(family);
    }
    auto* completer = new QCompleter(families, rows_.at(Fact::family).values);
    completer->setCaseSensitivity(Qt::CaseInsensitive);
    rows_.at(Fact::family).values->setCompleter(completer);
    const LookFacts facts = session_.library().look_facts().of(look);
    for (const auto& [fact, row] : rows_) show_fact(fact, facts);
}

void FactsForm::show_fact(Fact fact, const LookFacts& facts) {
    QStringList values;
    bool said = false;
    for (const LookFact& each : facts) {
        if (each.fact != fact) continue;
        values << from_utf8(each.value);
        said = said || each.said;
    }
    Row& row = rows_.at(fact);
    const QString text = values.join(QStringLiteral(", "));
    if (row.values->text() != text) row.values->setText(text);
    row.shown = text;
    row.source->setText(values.isEmpty() ? QString()
                        : said           ? tr("your word")
                                         : tr("from the recipe"));
    row.as_read->setVisible(said);
    row.as_read->setAccessibleName(tr("%1 as the recipe says").arg(shown(fact)));
}

void FactsForm::keep(Fact fact) {
    const Row& row = rows_.at(fact);
    if (row.values->text() == row.shown) return;
    say(fact, values_in(row.values->text()));
}

void FactsForm::say(Fact fact, const std::vector<std::string>& values) {
    session_.attempt([&] { session_.change_records(say_fact(look_, fact, values)); });
}

}  // namespace quarterturn
