#include "ui/consent/sign_page.h"

#include <QButtonGroup>
#include <QGridLayout>
#include <QRadioButton>
#include <QTemporaryDir>

#include "indexer/store/library_settings.h"
#include "ui/consent/consent_words.h"
#include "ui/consent/giver_fields.h"
#include "ui/consent/optional_day.h"
#include "ui/consent/signature_pad.h"
#include "ui/consent/signed_paper.h"
#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/widgets/notice.h"
#include "ui/widgets/page.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/said_here.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

enum class Answer { face, hair, no };
constexpr std::array all_answers{Answer::face, Answer::hair, Answer::no};

QString answer_words(Answer answer) {
    switch (answer) {
        case Answer::face:
            return SignPage::tr("Yes, with my face");
        case Answer::hair:
            return SignPage::tr("Yes, hair only");
        case Answer::no:
            return SignPage::tr("No");
    }
    return {};
}

void record_with_picture(Library& library, const SignedForm& form, LocalTime now) {
    const QTemporaryDir folder;
    const QString day = QString::fromStdString(iso_text(date_of(now)));
    const QString file = folder.filePath(QStringLiteral("signed on the screen %1.png").arg(day));
    if (!signed_picture(form).save(file)) {
        throw std::runtime_error(to_utf8(
            SignPage::tr("%1 could not be written: see whether the disk is full.").arg(file)));
    }
    record_said(library, form.said, to_utf8(file));
}

}  // namespace

SignPage::SignPage(Session& session, QWidget* parent) : QWidget(parent), session_(session) {
    const ScrollingPage page = make_scrolling_page();
    column_ = page.column;
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 0, 0, 0);
    all->addWidget(page.scroll);
}

FormFacts SignPage::facts() const {
    FormFacts facts;
    facts.client = client_.name;
    facts.business = session_.library().settings().get(business_name_setting).value_or("");
    facts.contact = session_.library().settings().get(business_contact_setting).value_or("");
    facts.date = session_.today();
    return facts;
}

void SignPage::show_client(const Client& client) {
    client_ = client;
    empty_layout(column_);
    uses_.clear();
    until_ = nullptr;
    blocks_ = form_blocks(consent_form_wording(session_.library()), facts());
    for (const FormBlock& block : blocks_) add_block(block);
    column_->addWidget(make_sign_part());
    column_->addStretch();
}

void SignPage::add_block(const FormBlock& block) {
    const QString words = from_utf8(block.words);
    switch (block.part) {
        case FormPart::heading:
            column_->addWidget(make_heading(words));
            break;
        case FormPart::framed: {
            auto* framed = new Notice;
            column_->addWidget(framed);
            framed->say(words);
            break;
        }
        case FormPart::paragraph:
            // What is filled in by hand on paper has fields of its own here.
            if (!block.by_hand) column_->addWidget(make_text(words));
            break;
        case FormPart::uses:
            column_->addWidget(make_uses());
            break;
        case FormPart::until:
            until_ = new OptionalDay(tr("Only until"), usual_end(session_.today()));
            column_->addWidget(until_, 0, Qt::AlignLeading);
            break;
        case FormPart::sign:
            break;  // at the end of the page
    }
}

QWidget* SignPage::make_uses() {
    const Card card = make_card();
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(space(6));
    grid->setVerticalSpacing(space(2));
    grid->setColumnStretch(0, 1);
    int row = 0;
    for (const Use use : all_uses) add_use(*grid, row++, use);
    card.column->addLayout(grid);
    return card.frame;
}

void SignPage::add_use(QGridLayout& grid, int row, Use use) {
    const QString name = from_utf8(use_on_form(use));
    auto* group = new QButtonGroup(this);
    grid.addWidget(make_text(name), row, 0);
    int column = 1;
    for (const Answer answer : all_answers) {
        auto* choice = new QRadioButton(answer_words(answer));
        //: a use, and an answer for it
        choice->setAccessibleName(tr("%1: %2").arg(name, choice->text()));
        choice->setMinimumHeight(morning_target);
        group->addButton(choice, static_cast<int>(answer));
        grid.addWidget(choice, row, column++);
    }
    uses_[use] = group;
}

QWidget* SignPage::make_sign_part() {
    const Card card = make_card();
    giver_ = new GiverFields;
    pad_ = new SignaturePad;
    notice_ = new Notice;
    card.column->setSpacing(space(3));
    card.column->addWidget(giver_);
    //: where the client signs
    card.column->addWidget(make_heading(tr("Sign here")));
    card.column->addWidget(pad_);
    card.column->addWidget(
        make_quiet(tr("With a pen, a finger or the mouse. Who would rather not sign on a screen "
                      "signs on paper, and the scan is attached; or says it before a witness, who "
                      "is named.")));
    card.column->addWidget(notice_);
    QPushButton* record = make_next_button(tr("Record what is signed"));
    QPushButton* again = make_button(tr("Clear the signature"));
    QPushButton* leave = make_button(tr("Leave without recording"));
    connect(record, &QPushButton::clicked, this, &SignPage::save);
    connect(again, &QPushButton::clicked, pad_, &SignaturePad::clear);
    connect(leave, &QPushButton::clicked, this, &SignPage::done);
    QHBoxLayout* buttons = make_row();
    for (QPushButton* button : {record, again, leave}) buttons->addWidget(button);
    buttons->addStretch();
    card.column->addLayout(buttons);
    const auto entries = session_.library().consents().of(client_.id);
    giver_->show_giver(age_on(entries, session_.today()),
                       entries.empty() ? nullptr : &entries.back());
    return card.frame;
}

ConsentEntry SignPage::entry(ConsentSaid said) const {
    ConsentEntry entry;
    entry.client = client_.id;
    entry.said = said;
    entry.said_on = session_.today();
    entry.how = HowGiven::signed_form;
    entry.recorded_at = session_.now();
    if (said == ConsentSaid::granted && until_) entry.until = until_->day();
    giver_->say_in(entry);
    return entry;
}

std::vector<SaidOfUses> SignPage::answers() const {
    std::vector<SaidOfUses> all;
    for (const Answer answer : all_answers) {
        SaidOfUses said{entry(answer == Answer::no ? ConsentSaid::declined : ConsentSaid::granted),
                        {}};
        said.entry.shown = answer == Answer::face ? ShownAs::with_her_face : ShownAs::hair_only;
        for (const auto& [use, group] : uses_) {
            if (group->checkedId() == static_cast<int>(answer)) said.uses.push_back(use);
        }
        if (!said.uses.empty()) all.push_back(std::move(said));
    }
    return all;
}

void SignPage::save() {
    const auto said = answers();
    if (said.empty()) return notice_->say(tr("Nothing is ticked yet, and that means no."));
    if (!pad_->is_signed()) return notice_->say(tr("The signature is still missing."));
    try {
        record_with_picture(session_.library(), {blocks_, facts(), said, pad_->picture()},
                            session_.now());
    } catch (const std::exception& problem) {
        return notice_->say(said_here(problem.what()));
    }
    emit done();
    session_.touch();
}

}  // namespace quarterturn
