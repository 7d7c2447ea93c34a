#include "ui/coming_up/occasion_card.h"

#include "ui/coming_up/client_form.h"
#include "ui/coming_up/date_block.h"
#include "ui/coming_up/look_form.h"
#include "ui/coming_up/look_line.h"
#include "ui/coming_up/next_steps.h"
#include "ui/coming_up/occasion_words.h"
#include "ui/coming_up/sitting_form.h"
#include "ui/coming_up/wedding_form.h"
#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/widgets/flow_layout.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/sentence_link.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

// The first look that still needs something, and failing that the first one there is.
const LookAhead* most_pressing(const Occasion& occasion) {
    const LookAhead* first = nullptr;
    for (const ClientAhead& client : occasion.clients) {
        for (const LookAhead& look : client.looks) {
            if (!look.standing) continue;
            if (look.standing->next != NextStep::nothing) return &look;
            if (!first) first = &look;
        }
    }
    return first;
}

std::size_t looks_of(const Occasion& occasion) {
    std::size_t count = 0;
    for (const ClientAhead& client : occasion.clients) count += client.looks.size();
    return count;
}

}  // namespace

OccasionCard::OccasionCard(Session& session, const Occasion& occasion, QWidget* parent)
    : QFrame(parent), session_(session), occasion_(occasion), column_(new QVBoxLayout(this)) {
    setProperty("kind", QStringLiteral("card"));
    setAccessibleName(occasion_title(occasion));
    column_->setContentsMargins(space(6), space(5), space(6), space(5));
    content_ = build_content();
    column_->addWidget(content_);
}

QWidget* OccasionCard::build_content() {
    auto* content = new QWidget;
    auto* row = new QHBoxLayout(content);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(space(6));
    row->addWidget(new DateBlock(occasion_.date, session_.today()), 0, Qt::AlignTop);
    row->addLayout(build_words(), 1);
    return content;
}

QLayout* OccasionCard::build_words() {
    QVBoxLayout* column = make_column(2);
    column->addWidget(make_heading(occasion_title(occasion_)));
    const QString details = occasion_details(occasion_);
    if (!details.isEmpty()) column->addWidget(make_quiet(details));
    for (const ClientAhead& client : occasion_.clients) column->addWidget(build_client(client));
    if (occasion_.clients.empty()) {
        column->addWidget(
            make_quiet(tr("Nobody is in the party yet: change the wedding to add "
                          "the bride and the others.")));
    }
    column->addLayout(build_buttons());
    return column;
}

QWidget* OccasionCard::build_client(const ClientAhead& client) {
    auto* part = new QWidget;
    auto* column = new QVBoxLayout(part);
    column->setContentsMargins(0, space(1), 0, space(1));
    column->setSpacing(space(2));
    QHBoxLayout* head = make_row(2);
    auto* name = new SentenceLink(client_title(client));
    QFont bold = text_font(TextRole::body);
    bold.setBold(true);
    name->setFont(bold);
    name->setAccessibleName(tr("Records of %1").arg(client_title(client)));
    connect(name, &SentenceLink::clicked, this, [this, id = client.client.id] {
        session_.go_to({.moment = Moment::client_record, .client = id});
    });
    head->addWidget(name, 1);
    head->addLayout(build_client_buttons(client));
    column->addWidget(make_hairline());
    column->addLayout(head);
    for (const LookAhead& look : client.looks) column->addWidget(new LookLine(session_, look));
    if (client.looks.empty()) column->addWidget(make_quiet(tr("No look planned yet.")));
    return part;
}

QLayout* OccasionCard::build_client_buttons(const ClientAhead& client) {
    const QString name = from_utf8(client.client.name);
    QPushButton* note = make_quiet_button(tr("Details"));
    note->setAccessibleName(tr("Details of %1").arg(name));
    connect(note, &QPushButton::clicked, this,
            [this, client] { show_form(new ClientForm(session_, client.client)); });
    QPushButton* look = make_quiet_button(tr("Add a look"));
    look->setAccessibleName(tr("Add a look for %1").arg(name));
    connect(look, &QPushButton::clicked, this, [this, client] {
        show_form(new LookForm(session_, new_look_for(occasion_, client.client)));
    });
    QHBoxLayout* row = make_row(1);
    row->addWidget(look);
    row->addWidget(note);
    return row;
}

QLayout* OccasionCard::build_buttons() {
    auto* row = new FlowLayout(space(2));
    const bool on_the_day = occasion_.is_wedding && occasion_.date == session_.today();
    const QString board = tr("The wedding morning");
    if (on_the_day) {
        add_way(*row, make_next_button(board), Moment::wedding_morning);
    } else {
        add_next_button(*row);
    }
    const QString title = occasion_title(occasion_);
    QPushButton* change =
        make_button(occasion_.is_wedding ? tr("Change the wedding") : tr("Change the sitting"));
    change->setAccessibleName(tr("Change: %1").arg(title));
    connect(change, &QPushButton::clicked, this, &OccasionCard::change);
    row->addWidget(change);
    QPushButton* trial =
        make_button(occasion_.is_wedding ? tr("Add a sitting") : tr("Plan a second trial"));
    trial->setAccessibleName(tr("%1: %2").arg(trial->text(), title));
    connect(trial, &QPushButton::clicked, this, &OccasionCard::add_sitting);
    row->addWidget(trial);
    if (occasion_.is_wedding) {
        add_way(*row, make_button(tr("What to pack")), Moment::kit_list);
        add_way(*row, make_button(tr("Who sits when")), Moment::running_order);
        if (!on_the_day) add_way(*row, make_button(board), Moment::wedding_morning);
    }
    return row;
}

void OccasionCard::add_way(QLayout& row, QPushButton* way, Moment moment) {
    way->setAccessibleName(tr("%1: %2").arg(way->text(), occasion_title(occasion_)));
    connect(way, &QPushButton::clicked, this, [this, moment] {
        session_.go_to({.moment = moment, .wedding = occasion_.wedding->id});
    });
    row.addWidget(way);
}

void OccasionCard::add_next_button(QLayout& row) {
    const LookAhead* look = most_pressing(occasion_);
    if (!look) return;
    const NextStep step = look->standing->next;
    const std::optional<Shot> shot =
        look->standing->lacks.empty() ? std::nullopt : look->standing->lacks.front().shot;
    //: what to do next, and for which look
    const QString whole = tr("%1: %2").arg(step_text(step), from_utf8(look->look.name));
    QPushButton* next = make_next_button(looks_of(occasion_) > 1 ? whole : step_text(step));
    next->setAccessibleName(whole);
    connect(next, &QPushButton::clicked, this,
            [this, place = step_place(step, look->look, shot)] { session_.go_to(place); });
    row.addWidget(next);
}

void OccasionCard::change() {
    if (occasion_.is_wedding) {
        show_form(new WeddingForm(session_, occasion_.wedding));
    } else {
        show_form(new SittingForm(session_, occasion_.sittings.front()));
    }
}

void OccasionCard::add_sitting() {
    show_form(new SittingForm(session_, further_trial(occasion_, session_.today())));
}

void OccasionCard::show_form(RecordForm* form) {
    form_ = form;
    content_->hide();
    column_->addWidget(form);
    connect(form, &RecordForm::done, this, &OccasionCard::close_form);
    form->setFocus();
}

void OccasionCard::close_form() {
    form_->deleteLater();
    form_ = nullptr;
    content_->show();
    emit form_closed();
}

}  // namespace quarterturn
