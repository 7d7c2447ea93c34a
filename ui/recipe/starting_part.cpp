#include "ui/recipe/starting_part.h"

#include <QComboBox>
#include <QLineEdit>

#include "indexer/looks/write_recipe.h"
#include "indexer/rules/recipe_start.h"
#include "indexer/store/many_looks.h"
#include "ui/recipe/marked_button.h"
#include "ui/recipe/recipe_edits.h"
#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/widgets/notice.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

constexpr int least_letters_of_a_name = 12;

QComboBox* make_list(const QString& name) {
    auto* list = new QComboBox;
    list->setAccessibleName(name);
    list->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    list->setMinimumContentsLength(least_letters_of_a_name);
    list->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    return list;
}

}  // namespace

StartingPart::StartingPart(Session& session, RecipeInHand& in_hand, QWidget* parent)
    : QWidget(parent),
      session_(session),
      in_hand_(in_hand),
      heading_(new MarkedButton(Mark::folded, tr("Start from another look or a template"))),
      from_(make_list(tr("Start from"))),
      start_(make_button(tr("Start from it"))),
      name_(new QLineEdit),
      templates_(make_list(tr("Your templates"))),
      remove_(make_quiet_button(tr("Remove it"))),
      notice_(new Notice) {
    body_ = build_body();
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space(2));
    column->addWidget(heading_);
    column->addWidget(body_);
    connect(heading_, &MarkedButton::clicked, this, [this] { unfold(!unfolded_); });
    unfold(false);
}

QWidget* StartingPart::build_body() {
    auto* body = new QWidget;
    auto* column = new QVBoxLayout(body);
    column->setContentsMargins(space(6), 0, 0, 0);
    column->setSpacing(space(2));
    column->addLayout(build_start());
    column->addWidget(make_quiet(
        tr("What was said, judged and photographed stays with its own look; her hair and cautions "
           "come along only for the same client. It takes the place of what is written here.")));
    column->addLayout(build_templates());
    column->addWidget(notice_);
    return body;
}

QLayout* StartingPart::build_start() {
    QHBoxLayout* row = make_row();
    row->addWidget(from_, 1);
    row->addWidget(start_);
    connect(start_, &QPushButton::clicked, this, &StartingPart::start);
    return row;
}

QLayout* StartingPart::build_templates() {
    QVBoxLayout* both = make_column();
    QHBoxLayout* keep = make_row();
    QPushButton* save = make_button(tr("Save as a template"));
    name_->setAccessibleName(tr("Name of the template"));
    name_->setPlaceholderText(tr("name of a template: low bun, fine hair"));
    keep->addWidget(name_, 1);
    keep->addWidget(save);
    both->addLayout(keep);
    QHBoxLayout* drop = make_row();
    drop->addWidget(templates_, 1);
    remove_->setAccessibleName(tr("Remove the template"));
    drop->addWidget(remove_);
    both->addLayout(drop);
    connect(save, &QPushButton::clicked, this, &StartingPart::save_template);
    connect(name_, &QLineEdit::returnPressed, this, &StartingPart::save_template);
    connect(remove_, &QPushButton::clicked, this, &StartingPart::remove_template);
    return both;
}

void StartingPart::unfold(bool unfolded) {
    unfolded_ = unfolded;
    heading_->show_mark(unfolded ? Mark::unfolded : Mark::folded);
    body_->setVisible(unfolded);
    notice_->say({});
}

void StartingPart::refresh() {
    Library& library = session_.library();
    const QString chosen = from_->currentText();
    const QString chosen_template = templates_->currentText();
    from_->clear();
    templates_->clear();
    for (const RecipeTemplate& each : library.recipe_templates().all()) {
        const QString name = from_utf8(each.name);
        from_->addItem(tr("Template: %1").arg(name), name);
        templates_->addItem(name);
    }
    const std::vector<Look> looks = library.looks().all();
    std::vector<LookId> ids;
    for (const Look& look : looks) ids.push_back(look.id);
    const auto recipes = ManyLooks(library.database(), ids).recipes();
    for (const Look& look : looks) {
        if (!recipes.contains(look.id) || (in_hand_.look() && look.id == in_hand_.look()->id)) {
            continue;
        }
        const auto client = library.clients().find(look.client);
        //: a client and one of her looks
        from_->addItem(tr("%1: %2").arg(from_utf8(client ? client->name : std::string()),
                                        from_utf8(look.name)),
                       QVariant::fromValue(qlonglong{look.id.value}));
    }
    from_->setCurrentIndex(std::max(0, from_->findText(chosen)));
    templates_->setCurrentIndex(std::max(0, templates_->findText(chosen_template)));
    from_->setEnabled(from_->count() > 0);
    start_->setEnabled(from_->count() > 0);
    templates_->setVisible(templates_->count() > 0);
    remove_->setVisible(templates_->count() > 0);
}

void StartingPart::start() {
    const QVariant chosen = from_->currentData();
    if (!in_hand_.look() || !chosen.isValid()) return;
    const QString from = from_->currentText();
    session_.attempt([&] {
        if (chosen.typeId() == QMetaType::QString) {
            start_from_template(to_utf8(chosen.toString()));
        } else {
            start_from_look(LookId{chosen.toLongLong()});
        }
    });
    session_.say(tr("Started from %1. Undo brings back what was here.").arg(isolated(from)));
}

void StartingPart::start_from_look(LookId id) {
    Library& library = session_.library();
    const auto other = library.looks().find(id);
    if (!other) return;
    const auto recipe = quarterturn::start_from_look(library, *in_hand_.look(), *other);
    if (!recipe) return;
    in_hand_.start_from(tr("started the recipe from %1").arg(from_utf8(other->name)), *recipe);
}

void StartingPart::start_from_template(const std::string& name) {
    const auto found = session_.library().recipe_templates().find(name);
    if (!found) return;
    in_hand_.start_from(tr("started the recipe from the template %1").arg(from_utf8(name)),
                        started_from(found->recipe, StartFor::another_client));
}

void StartingPart::save_template() {
    const std::string name = to_utf8(name_->text().trimmed());
    notice_->say(name.empty() ? tr("Give the template a name first.") : QString());
    if (name.empty()) return name_->setFocus();
    in_hand_.keep();
    if (session_.change_records(saving_template(name, in_hand_.recipe()))) {
        name_->clear();
        session_.say(tr("Saved as the template %1.").arg(isolated(from_utf8(name))));
    }
}

void StartingPart::remove_template() {
    const std::string name = to_utf8(templates_->currentText());
    if (name.empty()) return;
    session_.change_records(removing_template(name));
}

}  // namespace quarterturn
