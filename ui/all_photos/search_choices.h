#pragma once

#include <QWidget>
#include <functional>
#include <vector>

#include "indexer/record/people.h"
#include "indexer/store/photo_search.h"

class QPushButton;

namespace quarterturn {

class Session;

// What the photos are narrowed by, as a row of small buttons. One in use stands there as the word
// that was chosen, and goes when it is pressed.
class SearchChoices : public QWidget {
    Q_OBJECT
  public:
    explicit SearchChoices(Session& session, QWidget* parent = nullptr);

    const PhotoSearch& chosen() const { return search_; }  // without words
    QStringList in_words() const;                          // what is in use
    void clear();
    void refresh();  // names may have changed
    // The days offered at first.
    void suggest_days(Date from, Date to);

  signals:
    void changed();

  private:
    struct Choice {
        QString name;
        std::function<QString()> in_use;  // its word; empty when it is not in use
        std::function<void()> ask;
        std::function<void()> drop;
        bool opens = true;  // a list to choose from
        QPushButton* button = nullptr;
    };

    void add(Choice choice);
    void add_people();
    void add_words();
    void add_flags();
    void press(const Choice& choice);
    void offer(const QString& name, const QStringList& entries, std::function<void(int)> choose);
    void ask_client();
    void ask_look();
    void ask_sitting();
    void ask_device();
    void ask_days();
    QString client_name(ClientId client) const;
    QString sitting_name(const Sitting& sitting) const;
    QString days_words() const;
    void use(const std::function<void()>& change);

    Session& session_;
    PhotoSearch search_;
    std::vector<Choice> choices_;
    QPushButton* asked_ = nullptr;
    Date first_day_{};
    Date last_day_{};
};

}  // namespace quarterturn
