#pragma once

#include <QFrame>

#include "indexer/looks/coming_up.h"
#include "ui/shell/place.h"

class QLayout;
class QPushButton;
class QVBoxLayout;

namespace quarterturn {

class RecordForm;
class Session;

// A wedding or a sitting: when, who, how each look stands, and what to do next. It is changed
// in place: the card turns into a form and back.
class OccasionCard : public QFrame {
    Q_OBJECT
  public:
    OccasionCard(Session& session, const Occasion& occasion, QWidget* parent = nullptr);

    const Occasion& occasion() const { return occasion_; }
    bool being_changed() const { return form_ != nullptr; }

  signals:
    void form_closed();

  private:
    QWidget* build_content();
    QLayout* build_words();
    QWidget* build_client(const ClientAhead& client);
    QLayout* build_client_buttons(const ClientAhead& client);
    QLayout* build_buttons();
    void add_next_button(QLayout& row);
    void add_way(QLayout& row, QPushButton* way, Moment moment);
    void show_form(RecordForm* form);
    void close_form();
    void change();
    void add_sitting();

    Session& session_;
    Occasion occasion_;
    QVBoxLayout* column_;
    QWidget* content_;
    QWidget* form_ = nullptr;
};

}  // namespace quarterturn
