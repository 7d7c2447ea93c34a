#include "ui/consent/said_form.h"

#include <QButtonGroup>
#include <QCheckBox>
#include <QComboBox>
#include <QKeyEvent>
#include <QLineEdit>
#include <QRadioButton>

#include "ui/consent/consent_words.h"
#include "ui/consent/giver_fields.h"
#include "ui/consent/history_card.h"
#include "ui/consent/optional_day.h"
#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/widgets/date_field.h"
#include "ui/widgets/flow_layout.h"
#include "ui/widgets/form_buttons.h"
#include "ui/widgets/named_fields.h"
#include "ui/widgets/notice.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/said_here.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

constexpr std::array all_ways{HowGiven::signed_form, HowGiven::message, HowGiven::spoken};

QString question_title(const SaidQuestion& question) {
    const QString name = isolated(from_utf8(question.client.name));
    switch (question.said) {
        case ConsentSaid::granted:
            return SaidForm::tr("%1 allows it").arg(name);
        case ConsentSaid::declined:
            return SaidForm::tr("%1 does not want it").arg(name);
        case ConsentSaid::withdrawn:
            return SaidForm::tr("%1 takes it back").arg(name);
    }
    return {};
}

}  // namespace

SaidForm::SaidForm(Session& session, const SaidQuestion& question, QWidget* parent)
    : QWidget(parent), session_(session), question_(question) {
    column_ = new QVBoxLayout(this);
    column_->setContentsMargins(space(8), space(3), 0, space(4));
    column_->setSpacing(space(3));
    column_->addWidget(make_heading(question_title(question_)));
    add_uses();
    if (question_.said == ConsentSaid::granted) add_how_far();
    add_way();
    add_paper();
    add_buttons();
    show_before();
}

void SaidForm::add_uses() {
    auto* row = new FlowLayout(space(4));
    std::vector<Use> offered(all_uses.begin(), all_uses.end());
    if (question_.said == ConsentSaid::withdrawn) {
        offered = uses_to_withdraw(session_.library(), question_.client.id);
    }
    for (const Use use : offered) {
        auto* box = new QCheckBox(capitalised_words(shown(use)));
        box->setChecked(std::ranges::find(question_.uses, use) != question_.uses.end());
        row->addWidget(box);
        uses_[use] = box;
    }
    column_->addLayout(row);
}

void SaidForm::add_how_far() {
    auto* row = new FlowLayout(space(4));
    shown_ = new QButtonGroup(this);
    for (const ShownAs as : {ShownAs::hair_only, ShownAs::with_her_face}) {
        auto* choice = new QRadioButton(capitalised_words(shown(as)));
        shown_->addButton(choice, static_cast<int>(as));
        row->addWidget(choice);
    }
    const Date today = session_.today();
    from_ = new OptionalDay(tr("Only from"), today);
    until_ = new OptionalDay(tr("Only until"), usual_end(today));
    QHBoxLayout* days = make_row(6);
    days->addWidget(from_, 1);
    days->addWidget(until_, 1);
    column_->addLayout(row);
    column_->addLayout(days);
}

void SaidForm::add_way() {
    how_ = new QComboBox;
    for (const HowGiven how : all_ways) how_->addItem(capitalised_words(shown(how)));
    said_on_ = make_date_field(session_.today());
    said_on_->setMaximumDate(to_qdate(session_.today()));
    column_->addLayout(
        make_named_fields({{tr("How she said it"), how_}, {tr("The day she said it"), said_on_}}));
    witness_ = new QLineEdit;
    witness_->setPlaceholderText(tr("Who heard it"));
    witness_->setAccessibleName(tr("The witness who heard it"));
    column_->addWidget(witness_);
    how_->setPlaceholderText(tr("Choose how"));
    if (question_.said != ConsentSaid::granted) how_->setCurrentIndex(-1);
    const auto show_witness = [this] { witness_->setVisible(how() == HowGiven::spoken); };
    connect(how_, &QComboBox::currentIndexChanged, this, show_witness);
    show_witness();
    giver_ = new GiverFields;
    column_->addWidget(giver_);
    giver_->setVisible(question_.said != ConsentSaid::withdrawn);
}

void SaidForm::add_paper() {
    note_ = new QLineEdit;
    note_->setPlaceholderText(tr("Anything to remember"));
    note_->setAccessibleName(tr("Note"));
    QPushButton* choose = make_button(tr("Attach a scan or a message…"));
    connect(choose, &QPushButton::clicked, this, &SaidForm::choose_paper);
    paper_name_ = make_quiet(tr("No file is attached."));
    QHBoxLayout* row = make_row(3);
    row->addWidget(choose);
    row->addWidget(paper_name_, 1);
    column_->addWidget(note_);
    column_->addLayout(row);
}

void SaidForm::add_buttons() {
    notice_ = new Notice;
    column_->addWidget(notice_);
    buttons_ = new FormButtons(
        tr("Record it"), tr("It stays in the history, and counts until she says something else."));
    connect(buttons_, &FormButtons::kept, this, &SaidForm::save);
    connect(buttons_, &FormButtons::left, this, &SaidForm::done);
    column_->addWidget(buttons_);
}

// What was said before of the use, to be changed where it is no longer so.
void SaidForm::show_before() {
    const auto entries = session_.library().consents().of(question_.client.id);
    const Date today = session_.today();
    const ConsentEntry* before =
        question_.uses.empty() ? nullptr : consent_on(entries, question_.uses.front(), today).entry;
    const ConsentEntry* last = before ? before : entries.empty() ? nullptr : &entries.back();
    giver_->show_giver(age_on(entries, today), last);
    if (!shown_) return;
    const ShownAs as =
        before && before->said == ConsentSaid::granted ? before->shown : ShownAs::hair_only;
    shown_->button(static_cast<int>(as))->setChecked(true);
    if (!before || before->said != ConsentSaid::granted) return;
    from_->show_day(before->from);
    until_->show_day(before->until);
}

void SaidForm::choose_paper() {
    if (const auto file = ask_for_paper(*this)) attach(*file);
}

void SaidForm::attach(const Path& file) {
    paper_ = file;
    paper_name_->setText(from_utf8(file.filename().string()));
}

std::optional<HowGiven> SaidForm::how() const {
    const int chosen = how_->currentIndex();
    return chosen < 0 ? std::nullopt : std::optional(all_ways[static_cast<std::size_t>(chosen)]);
}

ConsentEntry SaidForm::entry() const {
    ConsentEntry entry;
    entry.client = question_.client.id;
    entry.said = question_.said;
    entry.said_on = date_in(*said_on_);
    entry.how = how().value();
    if (entry.how == HowGiven::spoken) entry.witness = to_utf8(witness_->text().trimmed());
    if (question_.said != ConsentSaid::withdrawn) giver_->say_in(entry);
    if (shown_) {
        entry.shown = static_cast<ShownAs>(shown_->checkedId());
        entry.from = from_->day();
        entry.until = until_->day();
    }
    entry.note = to_utf8(note_->text().trimmed());
    entry.recorded_at = session_.now();
    return entry;
}

std::vector<Use> SaidForm::chosen_uses() const {
    std::vector<Use> uses;
    for (const auto& [use, box] : uses_) {
        if (box->isChecked()) uses.push_back(use);
    }
    return uses;
}

void SaidForm::save() {
    const auto uses = chosen_uses();
    if (uses.empty()) return notice_->say(tr("Tick what she says it of."));
    if (!how()) return notice_->say(tr("Choose how she said it: it stays in the history so."));
    try {
        record_said(session_.library(), {{entry(), uses}}, paper_);
    } catch (const std::exception& problem) {
        return notice_->say(said_here(problem.what()));
    }
    emit done();
    session_.touch();
}

void SaidForm::keyPressEvent(QKeyEvent* event) {
    if (!buttons_->take_key(*event)) QWidget::keyPressEvent(event);
}

}  // namespace quarterturn
