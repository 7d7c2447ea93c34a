#pragma once

#include <QFrame>

#include "indexer/store/library.h"

class QPushButton;
class QVBoxLayout;

namespace quarterturn {

class Notice;
class Session;

// All that a client ever said of it, the newest first. Nothing here can be changed; a paper can be
// attached where it was missing.
class HistoryCard : public QFrame {
    Q_OBJECT
  public:
    explicit HistoryCard(Session& session, QWidget* parent = nullptr);

    void show_entries(const std::vector<ConsentEntry>& entries);
    void attach(ConsentId entry, const Path& file);

  private:
    QWidget* make_entry(const ConsentEntry& entry);
    void choose_paper(ConsentId entry);
    void check_papers();

    Session& session_;
    std::vector<ConsentEntry> shown_;
    QVBoxLayout* entries_;
    QPushButton* check_;
    Notice* notice_;
};

// Asks for the scan or the message; nothing when she thinks better of it.
std::optional<Path> ask_for_paper(QWidget& window);

}  // namespace quarterturn
